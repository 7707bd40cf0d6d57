"""Faults as values: joined, blamed and graded."""

import pytest

from exercises.tape import Fault, FaultKind, Measured, Severity, Source, Unit
from exercises.tape.faults.blame import blamed, cutter
from exercises.tape.faults.fault import joined
from exercises.tape.faults.severity import graded
from tests.exercises.tape.faults.benchwork import insert, recorded, tape

A: Source = tape(name="A")


def fault(start: int, end: int, edit: int | None, value: int) -> Fault:
    measured = Measured(value, Unit.IRE, 80)
    return Fault(
        FaultKind.FLAT_PICTURE, "picture", start, end, graded(80 - value, 10), edit, measured
    )


def test_neighbours_of_one_edit_are_one_fault_with_its_worst() -> None:
    faults = [fault(0, 5, 1, 70), fault(5, 9, 1, 60), fault(9, 12, 1, 65), fault(12, 20, 2, 60)]

    worst = fault(5, 9, 1, 60)._replace(start=0, end=12)
    assert list(joined(faults)) == [worst, fault(12, 20, 2, 60)]


def test_faults_with_something_between_stay_two() -> None:
    faults = [fault(0, 5, 1, 70), fault(6, 9, 1, 70)]

    assert list(joined(faults)) == faults
    assert list(joined([])) == []


def test_parts_of_a_range_are_blamed_on_who_was_there_last() -> None:
    track = recorded(insert(A, 0, 50, 100), insert(A, 0, 20, 110)).picture

    assert list(blamed(track, 90, 160)) == [
        (90, 100, None),
        (100, 110, 0),
        (110, 130, 1),
        (130, 150, 0),
        (150, 160, None),
    ]
    assert list(blamed(track, 115, 120)) == [(115, 120, 1)]


def test_later_of_two_sides_made_the_cut() -> None:
    track = recorded(insert(A, 0, 50, 100), insert(A, 0, 20, 110)).picture

    cuts = [cutter(track, at) for at in (90, 100, 105, 110, 130, 150)]

    assert cuts == [None, 0, 0, 1, 1, 0]


@pytest.mark.parametrize(
    ("beyond", "grade"), [(0, 4), (9, 4), (10, 3), (19, 3), (20, 2), (30, 1), (1000, 1)]
)
def test_grade_falls_by_one_a_step(beyond: int, grade: int) -> None:
    assert graded(beyond, 10) == grade


def test_grade_may_begin_lower() -> None:
    assert [graded(beyond, 1, best=Severity.SLIGHTLY_ANNOYING) for beyond in range(4)] == [
        *(3, 2, 1, 1)
    ]
