"""The cohorts that an instructor teaches."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.joining import NameInUseError, start_cohort
from course.cohorts.models import Cohort, Person
from tests.pages import heading, notices, refusals, texts
from tests.people import CohortFactory, learner

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


def test_instructor_sees_size_code_and_link_of_own_cohorts(
    ines: Person, harbour: Cohort, slipway: Cohort, mina: Person, tom: Person, client_of: ClientOf
) -> None:
    Cohort.objects.filter(pk=harbour.pk).update(
        started_at="2026-03-02T09:00:00Z", join_code="BCDFGHJK"
    )
    page = client_of(ines).get(reverse("cohorts"))

    assert texts(page, "h2") == ["Harbour group"]
    assert texts(page, "p", "quiet") == ["2 learners, started on 2 March 2026"]
    assert texts(page, "dd") == ["BCDF-GHJK", "http://testserver/join/BCDFGHJK/"]


def test_instructor_without_a_cohort_is_told_what_to_do(rafe: Person, client_of: ClientOf) -> None:
    page = client_of(rafe).get(reverse("cohorts"))

    assert texts(page, "p", "lede") == [
        "You teach no cohort yet. Start one, and give its joining code to your learners."
    ]


@pytest.mark.parametrize("number", [1, 3])
def test_cohort_list_asks_the_database_constantly(
    rafe: Person,
    client_of: ClientOf,
    number: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for index, cohort in enumerate(CohortFactory.create_batch(number)):
        cohort.instructors.add(rafe)
        learner(f"Learner{index} One", cohort)
    client = client_of(rafe)

    # Session, person, notices, links that others ask for, cohorts with their sizes.
    with django_assert_num_queries(5):
        client.get(reverse("cohorts"))


def test_instructor_starts_a_cohort_and_teaches_it(ines: Person, client_of: ClientOf) -> None:
    page = client_of(ines).post(reverse("new-cohort"), {"name": " Night  bench "}, follow=True)
    cohort = Cohort.objects.get()

    assert (cohort.name, list(cohort.instructors.all())) == ("Night bench", [ines])
    assert notices(page) == ["Night bench is ready. Give its joining code to your learners."]


def test_form_sent_twice_starts_one_cohort(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).post(reverse("new-cohort"), {"name": "harbour GROUP"})

    assert (page.status_code, Cohort.objects.count()) == (422, 1)
    assert refusals(page) == ["You already teach a cohort of this name. Choose another."]


def test_another_instructor_may_use_the_name(rafe: Person, harbour: Cohort) -> None:
    start_cohort(rafe, "Harbour group")

    assert Cohort.objects.filter(name="Harbour group").count() == 2


@pytest.mark.django_db(transaction=True)
def test_cohorts_of_one_name_started_at_once_are_one(ines: Person) -> None:
    start = Barrier(4)

    def one(_: int) -> bool:
        start.wait()
        try:
            start_cohort(ines, "Night bench")
        except NameInUseError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        started = list(pool.map(one, range(4)))

    assert (sum(started), Cohort.objects.count()) == (1, 1)


@pytest.mark.parametrize("name", ["", "  ", "x" * 121, "Night\0bench", "Night\u2067bench"])
def test_name_that_is_no_good_starts_nothing(ines: Person, client_of: ClientOf, name: str) -> None:
    page = client_of(ines).post(reverse("new-cohort"), {"name": name})

    assert (page.status_code, Cohort.objects.count()) == (422, 0)


@pytest.mark.parametrize("who", ["mina", "ada"])
def test_only_instructors_start_a_cohort(request: pytest.FixtureRequest, who: str) -> None:
    with pytest.raises(PermissionDenied):
        start_cohort(request.getfixturevalue(who), "Night bench")


def test_code_is_renewed_only_when_asked_twice(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    code = harbour.join_code
    page = client_of(ines).get(reverse("joining-code", args=[harbour.pk]))
    harbour.refresh_from_db()

    assert (heading(page), harbour.join_code) == ("The joining code", code)


def test_code_is_renewed_and_learners_stay(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    code = harbour.join_code
    page = client_of(ines).post(reverse("joining-code", args=[harbour.pk]), follow=True)
    harbour.refresh_from_db()

    assert (harbour.join_code == code, list(harbour.learners.all())) == (False, [mina])
    assert notices(page) == ["Harbour group has a new joining code. The old one no longer works."]


def test_code_of_another_cohort_stays(rafe: Person, harbour: Cohort, client_of: ClientOf) -> None:
    code = harbour.join_code
    response = client_of(rafe).post(reverse("joining-code", args=[harbour.pk]))
    harbour.refresh_from_db()

    assert (response.status_code, harbour.join_code) == (404, code)
