"""Pictures that are sent as answers: one a question, kept safely, gone with their learner."""

import os
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from io import BytesIO, StringIO
from pathlib import Path

import pytest
from django.core.management import call_command
from django.db import connection
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries, DjangoCaptureOnCommitCallbacks, Settings

from course.cohorts.models import Cohort, Person
from exercises.desk.verbs import publish, retire, revise
from exercises.drills.asks import AnswerRefused
from exercises.models import AppendOnlyError, Asked, Attempt, OwnDrill, Upload
from exercises.own_data.deletion import delete_learner
from exercises.practice import uploads
from exercises.practice.attempts import OutdatedError, ask, submit
from exercises.practice.uploads import path_of, sweep
from exercises.reviews.verbs import Said, answer_again, queue_of, review
from exercises.signal.photographs import Photograph, photograph
from tests.own import leads_text, published
from tests.photographs import file_of, leads

pytestmark = pytest.mark.django_db


def taken(size: tuple[int, int] = (60, 40)) -> Photograph:
    content = file_of(leads(size))
    return photograph(BytesIO(content), len(content))


@pytest.fixture
def drill(ines: Person, harbour: Cohort) -> OwnDrill:
    return published(ines, harbour, form="picture")


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, settings: Settings) -> Path:
    settings.PICTURES_DIR = tmp_path / "pictures"
    return tmp_path / "pictures"


def files(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.glob("*"))


def send(person: Person, drill: OwnDrill, size: tuple[int, int] = (60, 40)) -> Attempt:
    made = taken(size)
    return submit(ask(person, drill.kind), {"picture": made.digest}, photograph=made)


def test_picture_waits_and_counts_for_nothing(ines: Person, mina: Person, drill: OwnDrill) -> None:
    attempt = send(mina, drill)

    assert (attempt.pending, attempt.right, attempt.score) == (True, False, 0)
    assert attempt.feedback["rubric"] == ["both sound leads", "the picture lead"]
    assert not Attempt.objects.judged().exists()
    assert list(queue_of(ines)) == [attempt]


def test_picture_is_tied_to_its_answer(mina: Person, drill: OwnDrill, folder: Path) -> None:
    attempt = send(mina, drill)
    upload = attempt.upload

    assert (upload.attempt.person, upload.attempt.asked.person) == (mina, mina)
    assert (upload.width, upload.height, upload.size) == (60, 40, len(taken().jpeg))
    assert path_of(upload.name).read_bytes() == taken().jpeg
    assert attempt.answer == {"picture": taken().digest}
    assert files(folder) == [f"{upload.name}.jpg"]


def test_name_of_a_file_says_nothing(mina: Person, tom: Person, drill: OwnDrill) -> None:
    """The same picture twice has names that nobody can guess from it."""
    first, second = send(mina, drill).upload.name, send(tom, drill).upload.name

    assert len({first, second, taken().digest}) == 3
    assert len(first) >= 22  # 128 bits, six a character


def test_row_of_a_picture_is_never_changed(mina: Person, drill: OwnDrill) -> None:
    upload = send(mina, drill).upload

    with pytest.raises(AppendOnlyError):
        upload.save()


def test_sent_twice_is_one_attempt_and_one_picture(
    mina: Person, drill: OwnDrill, folder: Path
) -> None:
    asked = ask(mina, drill.kind)
    first = submit(asked, {"picture": taken().digest}, photograph=taken())
    other = taken((40, 40))
    second = submit(Asked.objects.get(pk=asked.pk), {"picture": other.digest}, photograph=other)

    assert second == first
    assert (Attempt.objects.count(), Upload.objects.count()) == (1, 1)
    assert files(folder) == [f"{first.upload.name}.jpg"]


@pytest.mark.django_db(transaction=True)
def test_sent_twice_at_once_is_one_attempt_and_one_picture(
    mina: Person, drill: OwnDrill, folder: Path
) -> None:
    asked, made = ask(mina, drill.kind), taken()

    def send_it(_: int) -> int:
        try:
            own = Asked.objects.get(pk=asked.pk)
            return submit(own, {"picture": made.digest}, photograph=made).pk
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        attempts = set(pool.map(send_it, range(4)))

    assert len(attempts) == 1
    assert files(folder) == [f"{Upload.objects.get().name}.jpg"]


@pytest.mark.parametrize("sent", [None, "other"])
def test_answer_without_its_picture_is_refused(
    mina: Person, drill: OwnDrill, folder: Path, sent: str | None
) -> None:
    other = taken((40, 40)) if sent else None
    with pytest.raises(AnswerRefused):
        submit(ask(mina, drill.kind), {"picture": taken().digest}, photograph=other)

    assert (Attempt.objects.exists(), files(folder)) == (False, [])


def test_picture_for_a_retired_drill_is_not_kept(
    mina: Person, drill: OwnDrill, folder: Path
) -> None:
    asked = ask(mina, drill.kind)
    retire(drill)
    with pytest.raises(OutdatedError):
        submit(Asked.objects.get(pk=asked.pk), {"picture": taken().digest}, photograph=taken())

    assert files(folder) == []


def test_full_disk_leaves_neither_row_nor_file(
    mina: Person, drill: OwnDrill, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(OSError, match="No space left"):
        send(mina, drill)

    assert (Attempt.objects.exists(), files(folder)) == (False, [])


def test_killed_before_the_row_leaves_a_file_that_is_swept(
    mina: Person, drill: OwnDrill, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The file is whole before the row is begun, so that no row is ever without its file."""
    found: list[list[str]] = []

    def killed(*_: object) -> None:
        found.append(files(folder))
        raise KeyboardInterrupt

    monkeypatch.setattr("exercises.practice.attempts.tie", killed)
    with pytest.raises(KeyboardInterrupt):
        send(mina, drill)

    assert [len(each) for each in found] == [1]
    assert (Attempt.objects.exists(), Upload.objects.exists()) == (False, False)
    assert sweep(timezone.now()) == 0  # it may be about to get its row
    assert sweep(timezone.now() + timedelta(hours=2)) == 1
    assert files(folder) == []


def test_tidy_takes_away_what_no_answer_names(mina: Person, drill: OwnDrill, folder: Path) -> None:
    kept = send(mina, drill).upload.name
    day_ago = (timezone.now() - timedelta(days=1)).timestamp()
    for name in ("stray.jpg", "half.part", f"{kept}.jpg"):
        (folder / name).touch()
        os.utime(folder / name, (day_ago, day_ago))
    (folder / "new.part").touch()
    out = StringIO()
    call_command("tidy", stdout=out)

    assert files(folder) == sorted([f"{kept}.jpg", "new.part"])
    assert out.getvalue() == "Pictures without an answer, removed: 2\n"


def test_tidy_has_nothing_to_do_where_no_picture_was_ever_sent() -> None:
    assert sweep(timezone.now()) == 0


def test_picture_goes_with_its_learner_only(
    mina: Person,
    tom: Person,
    drill: OwnDrill,
    folder: Path,
    django_capture_on_commit_callbacks: DjangoCaptureOnCommitCallbacks,
) -> None:
    send(mina, drill)
    stays = send(tom, drill).upload.name
    with django_capture_on_commit_callbacks() as effects:
        delete_learner(mina)
    before = len(files(folder))
    for effect in effects:
        effect()

    assert before == 2  # until it is certain that the rows are gone
    assert files(folder) == [f"{stays}.jpg"]
    assert [each.name for each in Upload.objects.all()] == [stays]


def test_file_that_is_gone_already_hinders_no_deletion(
    mina: Person,
    drill: OwnDrill,
    django_capture_on_commit_callbacks: DjangoCaptureOnCommitCallbacks,
) -> None:
    path_of(send(mina, drill).upload.name).unlink()
    with django_capture_on_commit_callbacks(execute=True):
        delete_learner(mina)

    assert not Person.objects.filter(pk=mina.pk).exists()


def test_removed_cohort_leaves_pictures_with_their_answers(
    mina: Person, harbour: Cohort, drill: OwnDrill, folder: Path
) -> None:
    kept = send(mina, drill).upload.name
    harbour.delete()

    assert files(folder) == [f"{kept}.jpg"]


def test_sent_back_picture_makes_room_for_another(
    ines: Person, mina: Person, drill: OwnDrill, folder: Path
) -> None:
    first = send(mina, drill)
    said = Said(what="sent-back", text="The sound leads can’t be seen.", key="d" * 32)
    review(ines, first, said)
    asked = answer_again(first)
    made = taken((80, 40))
    second = submit(asked, {"picture": made.digest}, photograph=made)

    assert second.asked.again == first
    assert list(queue_of(ines)) == [second]
    assert len(files(folder)) == 2


def test_picture_keeps_the_revision_it_was_sent_for(
    ines: Person, mina: Person, harbour: Cohort, drill: OwnDrill
) -> None:
    attempt = send(mina, drill)
    revise(drill, ines, leads_text(title="The leads of the player", rubric="the remote lead"))
    publish(drill, ines, [harbour])
    attempt.refresh_from_db()

    assert (attempt.kind.title, attempt.kind.revision) == ("The leads of our recorder", 1)
    assert attempt.feedback["rubric"] == ["both sound leads", "the picture lead"]


def test_many_pictures_are_swept_by_one_query(
    mina: Person, drill: OwnDrill, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    send(mina, drill)
    with django_assert_num_queries(1):
        uploads.sweep(timezone.now() + timedelta(days=1))
