"""The bench sheet: what was done at the real machines, told or seen, kept once."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.core.exceptions import PermissionDenied
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from course.cohorts.models import Cohort, Person
from exercises.bench.sheets import SheetSaid, keep_sheet
from exercises.models import BenchSheet
from exercises.standing.evidence import evidence_of

ClientOf = Callable[[Person], Client]
KEY = "a" * 32


def said(**changes: object) -> dict[str, object]:
    day = timezone.localdate().isoformat()
    return {"day": day, "edits": 4, "looked-back": "yes", "levels": "no", "key": KEY} | changes


def test_own_sheet_is_kept_and_stands_on_the_record(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)

    answer = client.post(reverse("bench-sheet"), said())

    sheet = BenchSheet.objects.get()
    assert answer.status_code == 302
    assert (sheet.person, sheet.by, sheet.edits) == (mina, mina, 4)
    assert sheet.habits == {"looked-back": True, "levels": False}
    page = client.get(reverse("record")).content.decode()
    assert "told by Mina" in " ".join(page.split())


def test_instructor_tells_what_was_seen_and_it_leads(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client_of(ines).post(reverse("cohort-bench-sheet", args=[harbour.pk, mina.pk]), said())
    client_of(mina).post(reverse("bench-sheet"), said(key="b" * 32, edits=9))

    seen, told = evidence_of(mina)["bench"]
    assert (seen["seen_by"], seen["edits"]) == (ines.name, 4)
    assert (told["seen_by"], told["edits"]) == ("", 9)
    assert seen["missed"] == ["Levels set by the meters"]


def test_sheet_sent_twice_is_kept_once(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    for _ in range(2):
        assert client.post(reverse("bench-sheet"), said()).status_code == 302

    assert client.post(reverse("bench-sheet"), said(edits=5)).status_code == 422
    assert BenchSheet.objects.count() == 1


@pytest.mark.parametrize(
    "changes",
    [
        {"day": ""},
        {"day": "yesterday"},
        {"day": (timezone.localdate() + timedelta(days=2)).isoformat()},
        {"day": "1950-01-01"},
        {"edits": "many"},
        {"edits": -1},
        {"edits": 10**30},
        {"looked-back": "perhaps"},
        {"wrong": "x" * 10_000},
        {"wrong": "\0"},
        {"key": "no key"},
    ],
    ids=str,
)
def test_what_is_no_sheet_is_refused(
    changes: dict[str, object], mina: Person, client_of: ClientOf
) -> None:
    assert client_of(mina).post(reverse("bench-sheet"), said(**changes)).status_code == 422
    assert not BenchSheet.objects.exists()


def test_nobody_tells_of_a_learner_whom_they_do_not_teach(rafe: Person, mina: Person) -> None:
    told = SheetSaid(day=timezone.localdate(), edits=1, habits={}, wrong="", key=KEY)

    with pytest.raises(PermissionDenied):
        keep_sheet(rafe, mina, told)
