"""A cohort that is over: put away, opened again, removed on its day."""

from collections.abc import Callable
from datetime import date, timedelta

import pytest
from django.core.exceptions import PermissionDenied
from django.core.management import call_command
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from course.cohorts.archiving import archive, remove_due, reopen
from course.cohorts.models import Cohort, Person
from tests.pages import notices, refusals, texts

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
DAY = date(2026, 8, 31)


def test_archived_cohort_is_in_its_own_list(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    client, day = client_of(ines), timezone.localdate() + timedelta(days=90)
    url = reverse("archive-cohort", args=[harbour.pk])
    page = client.post(url, {"remove_on": f"{day:%Y-%m-%d}"}, follow=True)

    assert notices(page) == [f"Harbour group is archived, and removed on {day:%-d %B %Y}."]
    assert texts(page, "h2") == ["Harbour group"]
    assert texts(client.get(reverse("cohorts")), "h2") == []
    assert client.get(harbour.get_absolute_url()).status_code == 200


def test_day_of_removal_is_yet_to_come(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    url = reverse("archive-cohort", args=[harbour.pk])
    page = client_of(ines).post(url, {"remove_on": f"{timezone.localdate():%Y-%m-%d}"})

    assert refusals(page) == ["Choose a later day than today, within the next ten years."]


@pytest.mark.parametrize(("today", "gone"), [(date(2026, 8, 30), []), (DAY, ["Harbour group"])])
def test_cohort_is_removed_on_its_day(
    ines: Person, harbour: Cohort, mina: Person, today: date, gone: list[str]
) -> None:
    archive(ines, harbour, DAY)

    assert remove_due(today) == gone
    assert Cohort.objects.exists() == (not gone)
    assert [notice.text for notice in mina.notices.all()] == [
        f"{name} is over and was removed. All your answers are kept." for name in gone
    ]
    assert Person.objects.filter(pk=mina.pk).exists()


@pytest.mark.parametrize("how", ["never", "opened again"])
def test_cohort_that_is_to_stay_stays(ines: Person, harbour: Cohort, how: str) -> None:
    archive(ines, harbour, None if how == "never" else DAY)
    if how == "opened again":
        reopen(ines, harbour)

    assert (remove_due(date(2036, 1, 1)), Cohort.objects.count()) == ([], 1)


def test_only_its_instructors_archive_a_cohort(rafe: Person, harbour: Cohort) -> None:
    with pytest.raises(PermissionDenied):
        archive(rafe, harbour, None)
    with pytest.raises(PermissionDenied):
        reopen(rafe, harbour)


def test_tidy_removes_what_is_due(
    ines: Person, harbour: Cohort, capsys: pytest.CaptureFixture[str]
) -> None:
    archive(ines, harbour, timezone.localdate())
    call_command("tidy")
    call_command("tidy")

    assert capsys.readouterr().out == "Removed: Harbour group\nNothing was due.\n"
