"""The clock was ahead and has been set right: what came later counts as later, what ends ends."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from unittest.mock import patch

import pytest
from django.test import Client, RequestFactory
from django.urls import reverse
from django.utils import timezone

from course.cohorts.accounts import just_made
from course.cohorts.benches import Bench
from course.cohorts.equipping import bench_of, usual_bench_of
from course.cohorts.models import Cohort, Membership, Notice, Person, ResetLink, RosterUpload
from course.cohorts.reset import LinkSpentError, make_reset_link, person_of_link
from course.cohorts.roster.upload import purge
from tests.people import CohortFactory

ClientOf = Callable[[Person], Client]
AHEAD = datetime(2036, 1, 1, 12, tzinfo=UTC)
RIGHT = datetime(2026, 5, 4, 12, tzinfo=UTC)


def bench(name: str, pre_roll: int) -> Bench:
    figures = {"line_system": "625", "source_run_up": 10, "lock": 130, "relock": 25}
    return Bench.objects.create(name=name, pre_roll=pre_roll, erase_gap=44, **figures)


def test_bench_is_that_of_the_cohort_joined_last(mina: Person, harbour: Cohort) -> None:
    newer = CohortFactory.create(name="Quay group", bench=bench("Newer", 9))
    Cohort.objects.filter(pk=harbour.pk).update(bench=bench("Older", 5))
    Membership.objects.filter(person=mina).update(joined_at=AHEAD)
    Membership.objects.create(cohort=newer, person=mina, joined_at=RIGHT)

    assert bench_of(mina).name == "Newer"


def test_bench_of_an_instructor_is_that_of_the_cohort_started_last(
    ines: Person, harbour: Cohort
) -> None:
    Cohort.objects.filter(pk=harbour.pk).update(bench=bench("Older", 5), started_at=AHEAD)
    newer = CohortFactory.create(name="Quay", bench=bench("Newer", 9), started_at=RIGHT)
    newer.instructors.add(ines)

    assert bench_of(ines).name == "Newer"
    assert usual_bench_of(ines) == newer.bench


def test_places_and_notices_and_links_stand_in_their_order(
    mina: Person, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    Membership.objects.filter(person=mina).update(joined_at=AHEAD)
    Membership.objects.create(cohort=slipway, person=mina, joined_at=RIGHT)
    for at, text in ((AHEAD, "First."), (RIGHT, "Second.")):
        Notice.objects.create(person=mina, text=text, at=at)
        ResetLink.objects.create(made_by=ines, for_person=mina, at=at)

    page = client_of(mina).get(reverse("account"))

    assert [place.cohort for place in page.context["places"]] == [harbour, slipway]
    assert [str(each) for each in Notice.objects.all()] == ["First.", "Second."]
    assert [each.at for each in ResetLink.objects.all()] == [RIGHT, AHEAD]


def test_roster_that_is_dated_into_the_future_is_not_kept_till_then(ines: Person) -> None:
    for text, at, written_at in (
        ("never written", AHEAD, None),
        ("", AHEAD, AHEAD),
        ("just sent", timezone.now(), None),
        ("sent before the clock was set back a little", timezone.now() + timedelta(hours=1), None),
    ):
        RosterUpload.objects.create(person=ines, text=text, at=at, written_at=written_at)

    purge(timezone.now())

    assert {each.text for each in RosterUpload.objects.all()} == {
        "just sent",
        "sent before the clock was set back a little",
    }


@pytest.mark.parametrize(
    ("made", "within"), [(timedelta(), True), (timedelta(days=3000), False), (-timedelta(2), False)]
)
def test_account_is_just_made_for_a_minute(made: timedelta, within: bool, mina: Person) -> None:
    Person.objects.filter(pk=mina.pk).update(joined_at=timezone.now() + made)

    assert just_made("mina") is within


def test_link_that_is_dated_into_the_future_does_not_work_till_then(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    request = RequestFactory().get("/")
    request.META["HTTP_HOST"] = "testserver"

    def parts(made: str) -> tuple[str, str]:
        uid, token = made.strip("/").split("/")[-2:]
        return uid, token

    now = make_reset_link(ines, mina, request)
    ahead = "django.contrib.auth.tokens.PasswordResetTokenGenerator._now"
    with patch(ahead, return_value=AHEAD.replace(tzinfo=None)):
        later = make_reset_link(ines, mina, request)

    assert person_of_link(*parts(now)) == mina
    with pytest.raises(LinkSpentError):
        person_of_link(*parts(later))
