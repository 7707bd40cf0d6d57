"""The files of the pictures that learners send: kept, read, taken away.

A name is random and says nothing of whose picture it is. A file is there, whole and on the disk,
before the row that names it; so a process that is killed may leave a file without a row, which
`sweep` takes away, and never a row without its file.
"""

import os
from collections.abc import Iterator
from contextlib import suppress
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path

from django.conf import settings
from django.db import transaction
from django.http import Http404

from course.cohorts.access import may_see_practice
from course.cohorts.models import Person
from course.disk import settle
from exercises.models import Attempt, Upload, new_token
from exercises.signal.photographs import Photograph

ENDING = ".jpg"
UNFINISHED = ".part"
# What has no row may be about to get one.
WRITING = timedelta(hours=1)


def keep(photograph: Photograph) -> str:
    """Write it, and give its name."""
    folder = Path(settings.PICTURES_DIR)
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    name = new_token()
    unfinished = folder / f"{name}{UNFINISHED}"
    try:
        write_through(unfinished, photograph.jpeg)
        unfinished.replace(path_of(name))
    except OSError:  # the disk is full
        unfinished.unlink(missing_ok=True)
        raise
    settle(folder)
    return name


def write_through(path: Path, content: bytes) -> None:
    """To the disk itself, so that a power cut does not take it; for the site alone to read."""
    path.touch(mode=0o600, exist_ok=False)
    with path.open("wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())


def path_of(name: str) -> Path:
    return Path(settings.PICTURES_DIR) / f"{name}{ENDING}"


def tie(name: str, photograph: Photograph, attempt: Attempt) -> Upload:
    """The row of a kept picture. Call it in the transaction that adds the attempt."""
    made = Upload(
        attempt=attempt,
        name=name,
        width=photograph.width,
        height=photograph.height,
        size=len(photograph.jpeg),
    )
    made.save(force_insert=True)
    return made


def content_for(person: object, name: str) -> bytes:
    """The picture, or 404: also for whoever may not see the answer."""
    found = Upload.objects.select_related("attempt__person").filter(name=name).first()
    if not (
        found and isinstance(person, Person) and may_see_practice(person, found.attempt.person)
    ):
        raise Http404
    try:
        return path_of(found.name).read_bytes()
    except FileNotFoundError as error:  # a database that was restored without its pictures
        raise Http404 from error


def pictures_of(person: Person) -> Iterator[tuple[str, bytes]]:
    """All that somebody sent, by the names of the files, the earliest first."""
    names = Upload.objects.filter(attempt__person=person).order_by("pk")
    for name in names.values_list("name", flat=True):
        with suppress(FileNotFoundError):  # as above
            yield path_of(name).name, path_of(name).read_bytes()


def discard(name: str) -> None:
    """Take its file away. Twice is once."""
    path_of(name).unlink(missing_ok=True)


def forget(instance: Upload, **_: object) -> None:
    """Take its file away once its row is gone for good, whoever deleted it."""
    transaction.on_commit(partial(discard, instance.name))


def without_picture() -> int:
    """How many rows name a picture that is not in the folder."""
    names = Upload.objects.values_list("name", flat=True)
    missing = [name for name in names.iterator() if not path_of(name).exists()]
    # One that was deleted since the names were read is not missing.
    return Upload.objects.filter(name__in=missing).count() if missing else 0


def sweep(now: datetime) -> int:
    """Take away the files that no row names, and say how many."""
    kept = set(Upload.objects.values_list("name", flat=True))
    strays = [path for path in settled_files(now) if path.stem not in kept]
    for path in strays:
        path.unlink(missing_ok=True)
    return len(strays)


def settled_files(now: datetime) -> Iterator[Path]:
    """Those of the folder that nobody is writing: their dates are not about now.

    What is dated into the future was written while the clock was ahead.
    """
    for path in Path(settings.PICTURES_DIR).glob("*"):
        with suppress(FileNotFoundError):  # taken away meanwhile, with its learner
            if abs(path.stat().st_mtime - now.timestamp()) > WRITING.total_seconds():
                yield path
