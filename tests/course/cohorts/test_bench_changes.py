"""Whose cohorts a change of bench figures is for, and that who changed what is kept and shown."""

import re
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier
from typing import Any

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.append_only import AppendOnlyError
from course.cohorts.bench_changes import BenchChange
from course.cohorts.benches import Bench
from course.cohorts.equipping import bench_of, move_to, set_figures
from course.cohorts.models import Cohort, Person
from course.templatetags.navigation import INSTRUCTOR
from tests.pages import notices, texts
from tests.people import CohortFactory, learner

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]

FIGURES: dict[str, Any] = {
    "name": "Bench 2",
    "line_system": "625",
    "drop_frame": False,
    "pre_roll": 6,
    "source_run_up": 10,
    "lock": 130,
    "relock": 25,
    "erase_gap": 44,
    "meters": ["vu", "tracking"],
    "who_to_ask": "Orla, at the counter",
    "local_rules": "No drinks.\nHands off the covers.",
}


def sent(**changed: Any) -> dict[str, Any]:
    return {key: value for key, value in {**FIGURES, **changed}.items() if value is not False}


@pytest.fixture
def shared(harbour: Cohort, slipway: Cohort) -> Bench:
    """A bench at which Ines's cohort works, and Rafe's, too."""
    bench = Bench.objects.create(**FIGURES)
    Cohort.objects.update(bench=bench)
    harbour.refresh_from_db()
    slipway.refresh_from_db()
    return bench


def page_of(client: Client, cohort: Cohort) -> str:
    return reverse("bench-figures", args=[cohort.pk])


def change(client: Client, cohort: Cohort, **changed: Any) -> list[str]:
    """Send the form as it stands, but for some figures; what the page says then."""
    return notices(client.post(page_of(client, cohort), sent(**changed), follow=True))


def shown(client: Client, cohort: Cohort) -> list[str]:
    """What the page says of each change, then of each of its figures; without the moment."""
    page = client.get(page_of(client, cohort))
    items = texts(page, "li")[len(INSTRUCTOR) :]  # the header's are before
    return [re.sub(r"^\d+ \w+ \d+, \d\d:\d\d: ", "", item) for item in items]


# --- Whose cohorts ----------------------------------------------------------------


def test_others_cohorts_keep_their_figures_and_rules(
    shared: Bench, ines: Person, harbour: Cohort, mina: Person, lena: Person, client_of: ClientOf
) -> None:
    said = change(client_of(ines), harbour, erase_gap=0, local_rules="Do as you please.")

    assert said == [
        "Bench 2 is a bench of your cohorts’ own now: "
        "lessons, drills and checklists use these figures."
    ]
    theirs, own = bench_of(lena), bench_of(mina)
    assert (theirs.as_settings().bench.erase_gap, theirs.local_rules) == (
        44,
        "No drinks.\nHands off the covers.",
    )
    assert (own.as_settings().bench.erase_gap, own.local_rules) == (0, "Do as you please.")
    assert (Bench.objects.get(pk=shared.pk).made_by, bench_of(mina).name) == (None, "Bench 2")


def test_copy_is_for_all_the_cohorts_that_the_instructor_teaches(
    shared: Bench, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    quay = CohortFactory.create(name="Quay group", bench=shared)
    quay.instructors.add(ines)
    change(client_of(ines), harbour, erase_gap=0)

    copy = Bench.objects.exclude(pk=shared.pk).get()
    assert set(copy.cohorts.all()) == {harbour, quay}
    assert (list(shared.cohorts.all()), copy.made_by) == ([slipway], ines)


def test_who_teaches_all_cohorts_changes_the_bench_itself(
    shared: Bench, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    slipway.instructors.add(ines)
    change(client_of(ines), harbour, erase_gap=0)

    assert [bench.erase_gap for bench in Bench.objects.all()] == [0]


def test_changing_nothing_makes_no_copy(
    shared: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    same = {"meters": ["tracking", "vu"], "local_rules": "No drinks.\r\nHands off the covers."}

    assert change(client_of(ines), harbour, **same) == ["Nothing was changed."]
    assert (Bench.objects.count(), BenchChange.objects.count()) == (1, 0)


def test_archived_cohort_of_others_keeps_its_figures_too(
    shared: Bench, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    slipway.archived_at = slipway.started_at
    slipway.save()
    change(client_of(ines), harbour, erase_gap=0)

    assert Bench.objects.get(cohorts=slipway).erase_gap == 44


def test_who_described_a_bench_changes_it_for_nobody_they_do_not_teach(
    shared: Bench, rafe: Person, harbour: Cohort
) -> None:
    shared.made_by = rafe
    shared.save()
    for verb in (lambda: set_figures(rafe, harbour, FIGURES), lambda: move_to(rafe, harbour, None)):
        with pytest.raises(PermissionDenied):
            verb()

    harbour.refresh_from_db()
    assert harbour.bench == shared


def test_page_says_beforehand_that_it_is_a_copy(
    shared: Bench, ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).get(page_of(client_of(ines), harbour))

    assert texts(page, "p", "lede") == ["Harbour group works at Bench 2."]
    assert texts(page, "p", "notice") == [
        "Cohorts that you don’t teach work at it, too: those of Rafe Okell. So what you change is "
        "changed in a copy of this bench, for Harbour group. Theirs stays as it is."
    ]
    assert "Slipway group" not in page.content.decode()


def test_page_of_a_bench_of_ones_own_says_nothing_of_copies(
    shared: Bench, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    slipway.instructors.add(ines)
    page = client_of(ines).get(page_of(client_of(ines), harbour))

    assert texts(page, "p", "notice") == []


def test_benches_of_one_name_are_told_apart_by_their_cohorts(
    shared: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    quay = CohortFactory.create(name="Quay group")
    quay.instructors.add(ines)
    client = client_of(ines)
    change(client, harbour, erase_gap=0)
    move_to(ines, quay, shared)

    assert texts(client.get(page_of(client, harbour)), "option")[-3:] == [
        "the usual figures",
        "Bench 2 (Quay group)",
        "Bench 2 (Harbour group)",
    ]


@pytest.mark.django_db(transaction=True)
def test_two_who_change_a_shared_bench_at_once_change_their_own(
    shared: Bench, ines: Person, rafe: Person, harbour: Cohort, slipway: Cohort
) -> None:
    start = Barrier(2)

    def one(who: tuple[Person, Cohort, int]) -> None:
        start.wait()
        set_figures(who[0], who[1], FIGURES | {"erase_gap": who[2]})
        connection.close()

    with ThreadPoolExecutor(2) as pool:
        list(pool.map(one, [(ines, harbour, 0), (rafe, slipway, 99)]))

    gaps = dict(Cohort.objects.values_list("name", "bench__erase_gap"))
    assert gaps == {"Harbour group": 0, "Slipway group": 99}
    assert BenchChange.objects.count() == 2


# --- What is kept -----------------------------------------------------------------


def test_page_shows_who_changed_what_the_latest_first(
    ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    harbour.instructors.add(rafe)
    change(client_of(ines), harbour)
    rules = "Hands off the covers.\nTwo people carry a machine."
    change(client_of(rafe), harbour, erase_gap=50, meters=["vu"], local_rules=rules, who_to_ask="")

    assert shown(client_of(ines), harbour) == [
        "Rafe Okell changed this bench.",
        "Erase gap, in frames: 50 instead of 44",
        "Meters: VU meter instead of VU meter, tracking meter",
        "Who to ask: nothing instead of “Orla, at the counter”",
        "Rules of your workshop: new, “Two people carry a machine.”; taken out, “No drinks.”",
        "Ines Marlow described this bench.",
    ]


def test_moment_is_shown(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    change(client_of(ines), harbour)
    (made,) = BenchChange.objects.all()
    page = client_of(ines).get(page_of(client_of(ines), harbour))

    assert texts(page, "time") == [f"{made.at:%-d %B %Y, %H:%M}"]


def test_figures_of_all_kinds_are_said_in_words(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ines)
    change(client, harbour)
    other = {"name": "Bench 3", "line_system": "525", "drop_frame": True, "meters": []}
    change(client, harbour, **other, local_rules="Hands off the covers.\nNo drinks.")

    assert shown(client, harbour)[:6] == [
        "Ines Marlow changed this bench.",
        "Name of the bench: “Bench 3” instead of “Bench 2”",
        "Lines and frames: 525 lines, 29.97 frames a second instead of "
        "625 lines, 25 frames a second",
        "Its time code is drop-frame: yes instead of no",
        "Meters: none instead of VU meter, tracking meter",
        "Rules of your workshop: in another order",
    ]


def test_copy_and_move_are_kept(
    shared: Bench, ines: Person, harbour: Cohort, slipway: Cohort, rafe: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    change(client, harbour, erase_gap=0)
    url = reverse("bench-choice", args=[harbour.pk])
    client.post(url, {"bench": ""}, follow=True)

    assert shown(client, harbour) == [
        "Ines Marlow let Harbour group go by the usual figures, no longer by Bench 2."
    ]
    (copied,) = BenchChange.objects.filter(what="copied")
    client.post(url, {"bench": copied.bench_id}, follow=True)
    assert shown(client, harbour) == [
        "Ines Marlow let Harbour group go by Bench 2, no longer by the usual figures.",
        "Ines Marlow let Harbour group go by the usual figures, no longer by Bench 2.",
        "Ines Marlow made this bench from Bench 2, at which others work, too.",
        "Erase gap, in frames: 0 instead of 44",
    ]
    assert shown(client_of(rafe), slipway) == []


def test_same_bench_again_is_no_move(
    shared: Bench, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client_of(ines).post(reverse("bench-choice", args=[harbour.pk]), {"bench": shared.pk})

    assert BenchChange.objects.count() == 0


def test_changes_are_only_added(ines: Person, harbour: Cohort) -> None:
    made = set_figures(ines, harbour, FIGURES)
    assert made

    with pytest.raises(AppendOnlyError):
        made.save()
    with pytest.raises(AppendOnlyError):
        BenchChange.objects.update(figures={})
    with pytest.raises(AppendOnlyError):
        BenchChange.objects.all().delete()


def test_change_that_fails_keeps_no_record(ines: Person, harbour: Cohort) -> None:
    set_figures(ines, harbour, FIGURES)
    with pytest.raises(ValueError, match="soon"):
        set_figures(ines, harbour, FIGURES | {"pre_roll": "soon"})

    assert [each.what for each in BenchChange.objects.all()] == ["described"]


def test_earlier_changes_are_folded(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    for gap in range(8):
        set_figures(ines, harbour, FIGURES | {"erase_gap": gap})
    client = client_of(ines)
    page = client.get(page_of(client, harbour))

    assert texts(page, "summary") == ["Earlier changes (3)"]
    told = [said for said in shown(client, harbour) if said.startswith("Ines Marlow")]
    assert len(told) == 8


@pytest.mark.parametrize("number", [1, 4])
def test_page_asks_the_database_constantly(
    shared: Bench,
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    number: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for each in range(number):
        fellow = Person.objects.create_user(f"f{each}", name="F", role=Person.Role.INSTRUCTOR)
        CohortFactory.create(bench=shared).instructors.add(fellow)
        learner(f"Extra{each} Person", harbour)
        cohort = CohortFactory.create(bench=shared)
        cohort.instructors.add(ines)
        move_to(ines, harbour, None)
        move_to(ines, harbour, shared)
    client = client_of(ines)

    # Session, person, cohort with bench; own cohorts at it, others at it, who teaches those;
    # benches to choose from with their cohorts, twice; the changes.
    with django_assert_num_queries(11):
        client.get(page_of(client, harbour))
