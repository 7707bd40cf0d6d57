"""The readiness board, from summaries."""

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.board.reads import PER_PAGE, BoardPage, BoardWanted, readiness
from exercises.models import Summary
from tests.people import learner

NOW = datetime(2026, 5, 20, 9, tzinfo=UTC)
Skills = dict[str, dict[str, Any]]


def skill(state: str, score: int, *, belief: str = "", times: int = 0) -> dict[str, Any]:
    last = (NOW - timedelta(days=1)).isoformat()
    said = {"belief": belief, "times": times}
    return {"state": state, "score": score, "answers": 9, "last": last, **said}


def summary(person: Person, skills: Skills, *, ago: int = 1) -> None:
    states = [each["state"] for each in skills.values()]
    weakest = min(skills, key=lambda slug: skills[slug]["score"])
    Summary.objects.create(
        person=person,
        skills=skills,
        answers=9 * len(skills),
        last_practised=NOW - timedelta(days=ago),
        steady=states.count("steady"),
        stuck=states.count("stuck"),
        weakest=weakest,
        weakest_score=skills[weakest]["score"],
    )


@pytest.fixture
def group(harbour: Cohort, mina: Person, tom: Person) -> Cohort:
    """Mina is stuck and keen, Tom steady and idle; Una has not begun."""
    learner("Una Quist", harbour)
    stuck = skill("stuck", 20, belief="insert-lays-pulses", times=4)
    summary(mina, {"tracks-and-pulses": stuck, "mending": skill("steady", 90)})
    summary(tom, {"run-up": skill("steady", 100), "mending": skill("steady", 95)}, ago=8)
    return harbour


def board(cohort: Cohort, **wanted: Any) -> BoardPage:
    return readiness(cohort, BoardWanted(**wanted), now=NOW)


def names(cohort: Cohort, **wanted: Any) -> list[str]:
    return [row.person.name.split()[0] for row in board(cohort, **wanted).rows]


def test_cells_say_how_each_stands_in_each_skill(group: Cohort) -> None:
    rows = board(group).rows

    told = {
        row.person.name: [cell.word for cell in row.cells if cell.word != "not begun"]
        for row in rows
    }
    assert told == {
        "Mina Tarrant": ["stuck", "steady"],
        "Tom Brandreth": ["steady"] * 2,
        "Una Quist": [],
    }


@pytest.mark.parametrize(
    ("sort", "expected"),
    [
        ("name", ["Mina", "Tom", "Una"]),
        ("last", ["Una", "Tom", "Mina"]),
        ("stuck", ["Mina", "Tom", "Una"]),
        ("weakest", ["Mina", "Tom", "Una"]),
        ("steady", ["Una", "Mina", "Tom"]),
    ],
)
def test_board_is_sorted(sort: str, expected: list[str], group: Cohort) -> None:
    assert names(group, sort=sort) == expected


@pytest.mark.parametrize(
    ("wanted", "expected"),
    [
        ({"show": "idle"}, ["Tom", "Una"]),
        ({"show": "idle", "idle_days": 30}, ["Una"]),
        ({"show": "stuck"}, ["Mina"]),
        ({"name": "bRAND"}, ["Tom"]),
        ({"skill": "mending", "state": "steady"}, ["Mina", "Tom"]),
        ({"skill": "run-up", "state": "steady"}, ["Tom"]),
        ({"skill": "run-up", "state": "not-begun"}, ["Mina", "Una"]),
        ({"skill": "run-up"}, ["Mina", "Tom", "Una"]),
    ],
)
def test_board_shows_only_whom_was_asked_for(
    wanted: dict[str, Any], expected: list[str], group: Cohort
) -> None:
    assert names(group, **wanted) == expected


def test_overview_names_the_idle_and_the_stuck_with_the_belief(group: Cohort) -> None:
    found = board(group, show="stuck").overview

    assert (found.people, found.idle_number, found.stuck_number) == (3, 2, 1)
    assert [person.name for person in found.idle] == ["Una Quist", "Tom Brandreth"]
    (stuck,) = found.stuck
    assert (stuck.skill.slug, stuck.times) == ("tracks-and-pulses", 4)
    assert stuck.sentence.startswith("Believes that an insert records the control track")


def test_board_of_many_is_in_pages_and_whole_to_print(harbour: Cohort) -> None:
    for number in range(PER_PAGE + 3):
        learner(f"Extra{number:03} Person", harbour)

    assert len(board(harbour).rows) == PER_PAGE
    assert len(board(harbour, page="2").rows) == 3
    assert len(board(harbour, page="nonsense").rows) == PER_PAGE
    assert len(board(harbour, whole=True).rows) == PER_PAGE + 3


def test_board_queries_do_not_grow(
    group: Cohort, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    for number in range(3):
        # number of people, the people, overview: numbers, idle, stuck
        with django_assert_num_queries(5):
            board(group)
        summary(learner(f"Extra{number} Person", group), {"mending": skill("shaky", 50)})
