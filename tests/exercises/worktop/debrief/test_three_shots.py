"""Each carelessness loses its own lines of the rubric, and is told as what it is."""

import pytest

from tests.exercises.worktop.debrief.three_shots import (
    again_and_again,
    in_place_of,
    kinds,
    lost,
    on_a_source_tape,
    told,
    with_mark,
    with_setting,
    without,
)
from tests.exercises.worktop.hands import Taken

PLAYED_OVER = (
    ("wind", {"machine": "recorder", "to": 875}),
    ("play", {"machine": "recorder", "frames": 800}),
)

CARELESS: dict[str, tuple[list[Taken], list[str]]] = {
    "never looks back": (without("look-back"), ["looked-back"]),
    "plays the master instead": (in_place_of("look-back", *PLAYED_OVER), []),
    "does not rehearse the first from a tape": (without("rehearse", edit=3), ["rehearsed"]),
    "does not rehearse a second from a tape": (without("rehearse", edit=2), []),
    "sets tracking for the first tape only": (
        without("tracking", edit=3),
        ["faults", "tracking"],
    ),
    "turns the recorder’s tracking": (
        with_setting("recorder-tracking", to=3),
        ["faults", "recorder"],
    ),
    "reads no meter": (without("play"), ["levels"]),
    "leaves the sound level of the tape before": (
        without("sound-level", edit=3),
        ["faults", "levels"],
    ),
    "inserts on blank tape": (with_setting("mode", mode="insert", edit=1), ["faults"]),
    "marks two frames late": (with_mark(2, "master_in", 2), ["programme", "faults"]),
    "records on a source tape": (on_a_source_tape(), ["at-risk"]),
    "makes an edit four times": (again_and_again(), ["economy"]),
    "does nothing": ([], ["programme"]),
}


@pytest.mark.parametrize(("actions", "lines"), CARELESS.values(), ids=CARELESS)
def test_careless_hands_lose_the_lines_of_what_they_left_out(
    actions: list[Taken], lines: list[str]
) -> None:
    found = told(actions)

    assert lost(found) == lines
    assert found.right is not bool({"programme", "faults"} & set(lines))
    assert (found.practise["line"] in lines) if found.practise else (lines == [])


BELIEVED: dict[str, tuple[list[Taken], list[tuple[str, list[int]]], list[str]]] = {
    "tracking set for the first tape alone": (
        without("tracking", edit=3),
        [("tracking", [3])],
        ["set-once"],
    ),
    "the recorder’s tracking turned once": (
        with_setting("recorder-tracking", to=3),
        [("recorder-tracking", [1, 2, 3])],
        ["tune-the-recorder"],
    ),
    "the level of the tape before": (
        without("sound-level", edit=3),
        [("sound-level", [3])],
        ["one-level-for-all"],
    ),
    "a level that nobody turned": (without("sound-level"), [("sound-level", [3])], []),
    "a recorder louder than it need be": (
        with_setting("sound-level", edit=3, mode="by hand", gain=60),
        [("sound-level", [3])],
        ["hotter-is-better"],
    ),
    "tracking that nobody touched": (without("tracking"), [("tracking", [1, 2])], []),
    "a run from one take into the next": (
        with_mark(2, "source_in", -475),
        [("misplaced", [2]), ("blank-source", [2]), ("new-take", [2])],
        [],
    ),
    "an insert on blank tape": (
        with_setting("mode", mode="insert", edit=1),
        [("no-pulses", [1])],
        ["insert-lays-pulses"],
    ),
    "a sound insert on blank tape": (
        with_setting("mode", mode="insert", picture=False, edit=2),
        [("track-left", [2]), ("no-pulses", [2])],
        ["sound-needs-no-pulses"],
    ),
    "a mark two frames late": (
        with_mark(2, "master_in", 2),
        [("hole", [2])],
        ["late-is-safer"],
    ),
    "a mark early, so that the next has a hole": (
        with_mark(2, "master_in", -20),
        [("misplaced", [2]), ("hole", [3])],
        [],
    ),
    "the same shot left out": (
        without("record", "rehearse", "look-back", edit=2),
        [("not-laid", []), ("master-run-up", [2])],
        ["no-master-run-up"],
    ),
}


@pytest.mark.parametrize(("actions", "mistakes", "beliefs"), BELIEVED.values(), ids=BELIEVED)
def test_a_mistake_is_told_once_with_its_edits_and_what_it_points_at(
    actions: list[Taken], mistakes: list[tuple[str, list[int]]], beliefs: list[str]
) -> None:
    found = told(actions)

    assert kinds(found) == mistakes
    assert found.beliefs == beliefs


def test_a_cause_names_the_edit_and_how_the_control_stood() -> None:
    (mistake,) = told(without("tracking", edit=3)).mistakes

    assert mistake["cause"] == (
        "Edit 3, an assemble from 00:00:58:00 to 00:01:05:00, was made with the player’s tracking "
        "4 to the right, 55 % of a track off; last turned at step 18, for Tape 3."
    )
    assert (mistake["prevented"]["lesson"], mistake["prevented"]["section"]) == (
        "setting-up-the-player",
        "set-up-first",
    )


def test_a_line_that_was_lost_says_at_which_steps() -> None:
    evidence = {line["slug"]: line["evidence"] for line in told(without("rehearse")).rubric}

    assert evidence["rehearsed"] == (
        "Rehearsed: 0 of 3 edits. Not edit 1 (step 14) and edit 3 (step 40), the first from its "
        "tape."
    )
