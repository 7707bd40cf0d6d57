"""What counts for a line of the rubric, and what does not."""

from collections.abc import Iterator
from typing import Any

from exercises.drills.setting.settings import USUAL
from exercises.worktop.debrief import debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.debrief.three_shots import (
    CAREFUL,
    SECOND,
    first_alone,
    hands,
    lost,
    one_edit,
    told,
)
from tests.exercises.worktop.hands import Taken


def evidence(actions: list[Taken], slug: str) -> str:
    return next(str(line["evidence"]) for line in told(actions).rubric if line["slug"] == slug)


def test_a_rehearsal_counts_for_the_marks_that_were_rehearsed() -> None:
    def change(edit: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        yield name, arguments
        if name == "rehearse" and edit == 3:
            yield "mark", {"which": "source_out", "at": 651}
            yield "mark", {"which": "source_in", "at": 476}

    assert lost(told(hands(change))) == ["rehearsed"]


def test_tracking_that_is_right_by_luck_was_not_set_for_the_tape() -> None:
    """It is turned before the cassette goes in, and nobody looks at what it plays."""
    wanted = {"Tape 3": 4, "Tape 5": -7}

    def change(edit: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        if name == "load" and arguments["tape"] in wanted:
            yield "tracking", {"to": wanted[arguments["tape"]]}
        if name not in ("tracking", "play"):
            yield name, arguments

    found = told(hands(change))

    assert lost(found) == ["tracking", "levels"]
    assert evidence(hands(change), "tracking") == (
        "Not looked at since the tape was put in: edit 1 (step 14), edit 2 (step 25) and edit 3 "
        "(step 39)."
    )


def test_time_at_the_bench_counts_as_edits_do() -> None:
    in_and_out = [
        ("take-out", {"machine": "recorder"}),
        ("load", {"machine": "recorder", "tape": "Edit master"}),
    ]
    *before, handing_in = CAREFUL

    actions = [*before, *8 * in_and_out, handing_in]

    assert lost(told(actions)) == ["economy"]
    assert evidence(actions, "economy") == (
        "You made 3 edits in 13:13 of bench time; the plan makes 3 edits in 6 minutes, and up to "
        "5 edits and 12 minutes pass."
    )


def test_a_look_back_counts_for_the_edit_before_it() -> None:
    actions = list(CAREFUL)
    first = [name for name, _ in actions].index("look-back")
    del actions[first]

    assert lost(told(actions)) == ["looked-back"]
    assert evidence(actions, "looked-back") == "Looked back at: 2 of 3 edits; not edit 1 (step 15)."


def test_a_meter_that_was_read_on_another_tape_is_not_denied() -> None:
    def change(edit: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        if name != "play" or edit != 3:
            yield name, arguments

    assert evidence(hands(change), "levels") == (
        "No meter read on Tape 5 between putting it in and edit 3 (step 42)."
    )


def test_one_edit_is_told_without_counting() -> None:
    actions = first_alone(*one_edit(475, 675, 40 * SECOND))
    careless = [each for each in actions if each[0] not in ("rehearse", "look-back")]

    assert evidence(careless, "rehearsed") == "Not rehearsed: edit 1 (step 12)."
    assert evidence(careless, "looked-back") == "Not looked back at: edit 1 (step 12)."


def test_nothing_recorded_has_no_faults_to_be_told_of() -> None:
    """Nor does whoever hands a whole film in again as it was."""
    film = lay_out(practicals()["cutaway"], USUAL)

    for found in (told([]), debrief(film, [("hand-in", {})])):
        assert {line["slug"]: line["got"] for line in found.rubric}["faults"] is None
        assert found.score == 0


def test_an_unsteady_copy_counts_where_it_was_not_asked_for_as_well() -> None:
    """It begins 2 s behind the take's beginning, 13 s before the place that the brief names."""
    early = first_alone(*one_edit(200, 675, 40 * SECOND - 275))

    assert evidence(early, "faults").endswith(
        "Unsteady, too, in what nobody asked for: edit 1 (step 13)."
    )
