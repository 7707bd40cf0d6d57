"""What to practise next: the cause that matters most, and nothing that was done already."""

from exercises.worktop.debrief.mistakes import MistakeKind
from exercises.worktop.debrief.mistakes.weight import WORST_FIRST
from tests.exercises.worktop.debrief.three_shots import (
    SECOND,
    first_alone,
    one_edit,
    told,
    with_setting,
    without,
)
from tests.exercises.worktop.hands import Taken


def next_of(actions: list[Taken]) -> str:
    practise = told(actions).practise
    assert practise is not None
    return str(practise["why"])


def test_every_mistake_has_its_weight() -> None:
    assert sorted(WORST_FIRST) == sorted(MistakeKind)


def test_pulses_come_before_shots_that_are_missing() -> None:
    """The first shot alone, inserted on blank tape."""
    inserted = [
        ("mode", {"mode": "insert", "picture": True, "sound": True}) if name == "mode" else each
        for each in first_alone(*one_edit(475, 675, 40 * SECOND))
        for name in each[:1]
    ]

    assert "pulses" in next_of(inserted)


def test_run_up_comes_before_the_shot_that_was_wrong_for_it() -> None:
    """Source in lies 20 frames into the take, which is another picture as well."""
    found = next_of(first_alone(*one_edit(170, 370, 40 * SECOND)))

    assert "run-up" in found


def test_nobody_who_rehearsed_is_told_to_rehearse() -> None:
    """Another picture of the same take, well run up."""
    actions = first_alone(*one_edit(775, 975, 40 * SECOND))
    careless = [each for each in actions if each[0] != "rehearse"]

    assert next_of(careless).startswith("Rehearse: ")
    assert next_of(actions).startswith("A rehearsal shows ")


def test_what_was_left_out_is_told_where_all_that_was_done_is_well() -> None:
    actions = first_alone(*one_edit(475, 675, 40 * SECOND))

    assert "whole edit master" in next_of(actions)


def test_tracking_comes_before_a_level() -> None:
    actions = with_setting("sound-level", mode="by hand", gain=150)
    both = [each for each in actions if each[0] != "tracking"]

    assert {each["kind"] for each in told(both).mistakes} >= {"tracking", "sound-level"}
    assert next_of(both) == next_of(without("tracking"))
