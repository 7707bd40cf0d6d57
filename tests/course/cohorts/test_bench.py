"""The figures of a bench: set once by an instructor, used by the learners of their cohorts."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier
from typing import Any

import pytest
from django.db import connection
from django.test import Client
from django.urls import reverse
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries

from course.cohorts.benches import Bench, usual_bench
from course.cohorts.equipping import bench_of, set_figures
from course.cohorts.joining import start_cohort
from course.cohorts.models import Cohort, Membership, Person
from exercises.drills.setting.bench_figures import BenchFigures
from exercises.drills.setting.settings import Meter, Settings
from exercises.tape import Rate
from tests.pages import notices, refusals, texts
from tests.people import CohortFactory

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]

FIGURES: dict[str, Any] = {
    "name": "Bench 2",
    "line_system": "525",
    "drop_frame": True,
    "pre_roll": 7,
    "source_run_up": 12,
    "lock": 165,
    "relock": 45,
    "erase_gap": 70,
    "meters": ["vu", "tracking"],
    "who_to_ask": "Orla, at the counter",
    "local_rules": "No drinks.\nHands off the covers.",
}


def sent(**changed: Any) -> dict[str, Any]:
    data = {**FIGURES, **changed}
    return {key: value for key, value in data.items() if value is not False}


@pytest.fixture
def own_bench(harbour: Cohort) -> Bench:
    bench = Bench.objects.create(**FIGURES)
    harbour.bench = bench
    harbour.save()
    return bench


def test_learner_without_a_bench_gets_the_usual_figures(mina: Person, solo: Person) -> None:
    assert bench_of(mina) == bench_of(solo) == BenchFigures.usual()


def test_usual_bench_is_common_practice() -> None:
    assert usual_bench().as_settings() == Settings.usual(Rate.R25)


def test_learner_gets_the_figures_of_the_cohort(
    own_bench: Bench, mina: Person, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    with django_assert_num_queries(1):
        figures = bench_of(mina)
    settings = figures.as_settings()

    assert (figures.name, figures.who_to_ask) == ("Bench 2", "Orla, at the counter")
    assert (settings.bench.rate, settings.drop_frame) == (Rate.R29_97, True)
    assert (settings.pre_roll, settings.source_run_up) == (210, 360)
    assert (settings.bench.lock, settings.bench.relock, settings.bench.erase_gap) == (165, 45, 70)
    assert settings.meters == {Meter.VU, Meter.TRACKING}


def test_newest_membership_decides(own_bench: Bench, mina: Person, slipway: Cohort) -> None:
    later = timezone.now() + timedelta(days=1)
    Membership.objects.create(cohort=slipway, person=mina, joined_at=later)

    assert bench_of(mina) == BenchFigures.usual()


def test_instructor_gets_the_figures_of_the_newest_cohort(own_bench: Bench, ines: Person) -> None:
    assert bench_of(ines).name == "Bench 2"


def test_first_figures_make_a_bench_for_every_cohort_without_one(
    ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    second = CohortFactory.create(name="Second group")
    second.instructors.add(ines)
    page = client_of(ines).post(reverse("bench-figures", args=[harbour.pk]), sent(), follow=True)
    bench = Bench.objects.get()

    assert notices(page) == ["Bench 2: lessons, drills and checklists use these figures."]
    assert set(bench.cohorts.all()) == {harbour, second}
    assert {key: getattr(bench, key) for key in FIGURES} == {
        **FIGURES,
        "local_rules": "No drinks.\nHands off the covers.",
    }


def test_figures_sent_twice_make_one_bench(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    for _ in range(2):
        client_of(ines).post(reverse("bench-figures", args=[harbour.pk]), sent())

    assert Bench.objects.count() == 1


def test_changed_figures_change_the_same_bench(
    own_bench: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client_of(ines).post(reverse("bench-figures", args=[harbour.pk]), sent(erase_gap=0))

    own_bench.refresh_from_db()
    assert (own_bench.erase_gap, own_bench.pre_roll) == (0, 7)


def test_new_cohort_takes_the_bench_of_the_others(own_bench: Bench, ines: Person) -> None:
    assert start_cohort(ines, "Third group").bench == own_bench


def test_new_cohort_of_another_instructor_takes_none(own_bench: Bench, rafe: Person) -> None:
    assert start_cohort(rafe, "Third group").bench is None


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"name": ""}, "This is still empty."),
        ({"pre_roll": ""}, "This is still empty."),
        ({"pre_roll": "soon"}, "Type a whole number from 1 to 20."),
        ({"pre_roll": 21}, "Type a whole number from 1 to 20."),
        ({"erase_gap": -1}, "Type a whole number from 0 to 300."),
        (
            {"lock": 211},
            "Machines that take longer to lock than the pre-roll are never locked.",
        ),
        ({"lock": 29, "relock": 20}, "At least 30 and at most 210 frames can be worked with here."),
        ({"relock": 166}, "At least 1 and at most 165 frames can be worked with here."),
        ({"line_system": "625"}, "Time code at 25 frames a second leaves no labels out."),
        ({"line_system": "405"}, "Select a valid choice. 405 is not one of the available choices."),
        ({"meters": ["nose"]}, "Select a valid choice. nose is not one of the available choices."),
        ({"who_to_ask": "a" * 121}, "Use at most 120 characters. This has 121."),
        (
            {"local_rules": "a\u202eb"},
            "There is a character in this that can’t be seen. Type it again.",
        ),
    ],
)
def test_figures_no_bench_can_have_are_refused(
    ines: Person, harbour: Cohort, client_of: ClientOf, changed: dict[str, Any], sentence: str
) -> None:
    page = client_of(ines).post(reverse("bench-figures", args=[harbour.pk]), sent(**changed))

    assert (page.status_code, Bench.objects.count()) == (422, 0)
    assert refusals(page) == [sentence]


def test_page_names_the_other_cohorts_of_the_bench(
    own_bench: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    start_cohort(ines, "Third group")
    page = client_of(ines).get(reverse("bench-figures", args=[harbour.pk]))

    assert texts(page, "p", "lede") == [
        "Harbour group works at Bench 2. It also serves Third group: "
        "what you change here holds there too."
    ]


def test_cohort_can_move_to_another_bench_of_the_instructor(
    own_bench: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    other = start_cohort(ines, "Third group")
    address = reverse("bench-choice", args=[other.pk])
    client_of(ines).post(address, {"bench": ""})
    other.refresh_from_db()
    assert other.bench is None

    page = client_of(ines).post(address, {"bench": own_bench.pk}, follow=True)

    other.refresh_from_db()
    assert other.bench == own_bench
    assert notices(page) == ["Third group goes by Bench 2 now."]


def test_cohort_can_not_move_to_somebody_elses_bench(
    own_bench: Bench, rafe: Person, slipway: Cohort, client_of: ClientOf
) -> None:
    address = reverse("bench-choice", args=[slipway.pk])
    page = client_of(rafe).post(address, {"bench": own_bench.pk}, follow=True)

    slipway.refresh_from_db()
    assert slipway.bench is None
    assert notices(page) == ["You look after no such bench. Choose one of the list."]


def test_bench_that_no_cohort_works_at_stays_with_who_described_it(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ines)
    client.post(reverse("bench-figures", args=[harbour.pk]), sent())
    client.post(reverse("bench-choice", args=[harbour.pk]), {"bench": ""})

    assert [bench.name for bench in Bench.objects.of_instructor(ines)] == ["Bench 2"]


@pytest.mark.django_db(transaction=True)
def test_figures_sent_at_the_same_moment_make_one_bench(ines: Person, harbour: Cohort) -> None:
    start = Barrier(4)

    def one(_: int) -> None:
        start.wait()
        set_figures(ines, harbour, FIGURES)
        connection.close()

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(one, range(4)))

    assert Bench.objects.count() == 1
