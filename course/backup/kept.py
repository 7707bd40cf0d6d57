"""What is backed up beside the database: the secret key and the pictures that learners sent."""

import os
from collections.abc import Iterator
from pathlib import Path

from django.conf import settings

UNFINISHED = ".part"  # a picture that is being written has no row yet


def pictures() -> Iterator[Path]:
    """The files of the pictures, by name. One of them may go while they are read."""
    folder = Path(settings.PICTURES_DIR)
    if folder.is_dir():
        yield from sorted(path for path in folder.iterdir() if path.suffix != UNFINISHED)


def key() -> bytes:
    return str(settings.SECRET_KEY).encode()


def another_key_is_set() -> bool:
    """Does the environment give a key that is not the one kept beside the database?"""
    given = {"SECRET_KEY", "SECRET_KEY_FILE"} & set(os.environ)
    return bool(given) and key() != Path(settings.KEPT_KEY).read_bytes()
