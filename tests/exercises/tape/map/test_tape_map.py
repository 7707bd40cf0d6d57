"""The tape map: what a template draws, and what a screen reader says."""

import json
from operator import itemgetter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import (
    Assemble,
    Bench,
    Insert,
    PlaybackState,
    Rate,
    Source,
    Take,
    Tape,
    TapeError,
    TapeMap,
    Unpulsed,
    faults,
    play,
    read_edit_session,
    record,
    tape_map,
    unpulsed,
)
from exercises.tape.map.parts import FaultMark, Lane, Mark, Segment
from tests.strategies import Document, documents

BENCH = Bench(Rate.R25, lock=100, relock=20, erase_gap=50)
REEL = Source("A", (Take(0, 2000),))


@pytest.fixture
def edited() -> Tape:
    """Black, then an assemble into it, and an insert of sound."""
    tape = Tape.blank(1000).with_pass(0, 600, "black")
    tape = record(tape, Assemble(REEL, 500, 600, 200), BENCH, 0)
    return record(tape, Insert(REEL, 800, 850, 240, picture=False, sound=True), BENCH, 1)


def test_map_has_every_part_in_its_place(edited: Tape) -> None:
    drawn = tape_map(
        edited,
        BENCH,
        start=100,
        end=500,
        names={"A": "Tape 3"},
        marks={"edit in": 200, "edit out": 300, "elsewhere": 900},
    )

    black = Segment(
        left=0.0,
        width=25.0,
        start=100,
        end=200,
        starts="00:00:04:00",
        ends="00:00:08:00",
        label="black",
        source="black",
        frame=100,
        source_at="00:00:04:00",
        generation=1,
        settled=True,
    )
    assert drawn.lanes[0].track == "picture"
    assert drawn.lanes[0].segments[0] == black
    assert [
        (part.left, part.width, part.label, part.frame, part.generation)
        for part in drawn.lanes[1].segments
    ] == [
        (0.0, 25.0, "black", 100, 1),
        (25.0, 10.0, "Tape 3", 500, 2),
        (35.0, 12.5, "Tape 3", 800, 2),
        (47.5, 2.5, "Tape 3", 590, 2),
        (62.5, 37.5, "black", 350, 1),
    ]
    assert drawn.lanes[2] == Lane(
        "control",
        (
            Segment(
                left=0.0,
                width=50.0,
                start=100,
                end=300,
                starts="00:00:04:00",
                ends="00:00:12:00",
                label="pulses",
            ),
            Segment(
                left=62.5,
                width=37.5,
                start=350,
                end=500,
                starts="00:00:14:00",
                ends="00:00:20:00",
                label="pulses",
            ),
        ),
    )
    assert drawn.faults == (
        FaultMark(
            left=50.0,
            width=12.5,
            start=300,
            end=350,
            starts="00:00:12:00",
            ends="00:00:14:00",
            state="no-control",
            edit=0,
            label="blank",
            sentence="blank tape: snow, or muted (edit 1)",
        ),
        FaultMark(
            left=62.5,
            width=5.0,
            start=350,
            end=370,
            starts="00:00:14:00",
            ends="00:00:14:20",
            state="relock",
            edit=None,
            label="rolls",
            sentence="the pulses have only just begun: the picture rolls",
        ),
    )
    assert drawn.marks == (
        Mark(left=25.0, frame=200, at="00:00:08:00", name="edit in"),
        Mark(left=50.0, frame=300, at="00:00:12:00", name="edit out"),
    )
    assert [tick.name for tick in drawn.ticks] == [f"00:00:{at:02}:00" for at in (6, 9, 12, 15, 18)]
    assert [tick.left for tick in drawn.ticks] == [12.5, 31.25, 50.0, 68.75, 87.5]


def test_phase_jump_is_flagged_where_runs_touch() -> None:
    tape = Tape.blank(300).with_pass(0, 100, "a").with_pass(100, 200, "b").with_pass(250, 300, "c")

    jumps = [(part.start, part.jump) for part in tape_map(tape, BENCH).lanes[2].segments]
    from_the_jump = tape_map(tape, BENCH, start=100).lanes[2].segments[0]
    past_the_jump = tape_map(tape, BENCH, start=101).lanes[2].segments[0]

    assert jumps == [(0, False), (100, True), (250, False)]
    assert (from_the_jump.jump, past_the_jump.jump) == (True, False)


def test_map_is_told_in_sentences(edited: Tape) -> None:
    drawn = tape_map(
        edited, BENCH, start=100, end=500, names={"A": "Tape 3"}, marks={"edit in": 200}
    )

    assert drawn.described() == (
        "The tape from 00:00:04:00 to 00:00:20:00.",
        "Edit in at 00:00:08:00.",
        "Picture track: black from 00:00:04:00 to 00:00:08:00 (its 00:00:04:00 on, generation 1); "
        "Tape 3 from 00:00:08:00 to 00:00:12:00 (its 00:00:20:00 on, generation 2); "
        "black from 00:00:14:00 to 00:00:20:00 (its 00:00:14:00 on, generation 1).",
        "Sound track: black from 00:00:04:00 to 00:00:08:00 (its 00:00:04:00 on, generation 1); "
        "Tape 3 from 00:00:08:00 to 00:00:09:15 (its 00:00:20:00 on, generation 2); "
        "Tape 3 from 00:00:09:15 to 00:00:11:15 (its 00:00:32:00 on, generation 2); "
        "Tape 3 from 00:00:11:15 to 00:00:12:00 (its 00:00:23:15 on, generation 2); "
        "black from 00:00:14:00 to 00:00:20:00 (its 00:00:14:00 on, generation 1).",
        "Control track: pulses from 00:00:04:00 to 00:00:12:00; "
        "pulses from 00:00:14:00 to 00:00:20:00.",
        "From 00:00:12:00 to 00:00:14:00, blank tape: snow, or muted (edit 1).",
        "From 00:00:14:00 to 00:00:14:20, the pulses have only just begun: the picture rolls.",
    )


def test_map_of_little_is_told_too() -> None:
    blank = tape_map(Tape.blank(100), BENCH).described()
    clean = tape_map(Tape.blank(100).with_pass(0, 100, "black"), BENCH, start=50).described()
    jumpy = Tape.blank(90).with_pass(0, 30, "a").with_pass(30, 60, "b").with_pass(60, 90, "c")

    assert blank[1:] == (
        "Picture track: blank.",
        "Sound track: blank.",
        "Control track: no pulses.",
        "From 00:00:00:00 to 00:00:04:00, blank tape: snow, or muted.",
    )
    assert clean[-1] == "All of it plays cleanly."
    assert (
        tape_map(jumpy, BENCH)
        .lanes[2]
        .described()
        .endswith("The phase jumps at 00:00:01:05 and 00:00:02:10.")
    )


def test_unsettled_copy_is_told() -> None:
    tape = Tape.blank(400).with_pass(0, 400, "black")
    tape = record(tape, Insert(REEL, 0, 50, 200, picture=True, sound=True), BENCH, 0)

    drawn = tape_map(tape, BENCH, start=200, end=250)

    assert drawn.described()[1:] == (
        "Picture track: A from 00:00:08:00 to 00:00:10:00 "
        "(its 00:00:00:00 on, generation 2, not settled).",
        "Sound track: A from 00:00:08:00 to 00:00:10:00 "
        "(its 00:00:00:00 on, generation 2, not settled).",
        "Control track: pulses from 00:00:08:00 to 00:00:10:00.",
        "From 00:00:08:00 to 00:00:10:00, copied while a machine was not locked: "
        "unsteady picture (edit 1).",
    )


def test_map_for_a_question_says_nothing_of_playback(edited: Tape) -> None:
    asked = tape_map(edited, BENCH, faults=False)

    assert asked.faults is None
    assert len(asked.described()) == 4
    assert TapeMap.from_json(asked.as_json()) == asked


@pytest.mark.parametrize(("start", "end"), [(0, 1001), (-1, 10), (10, 10), (20, 10)])
def test_window_off_the_tape_is_refused(edited: Tape, start: int, end: int) -> None:
    with pytest.raises(TapeError, match="does not lie on a tape of 1000"):
        tape_map(edited, BENCH, start=start, end=end)


def test_clock_begins_again_after_a_day() -> None:
    day = Rate.R25.day()

    drawn = tape_map(Tape.blank(day + 100), BENCH, start=day, end=day + 100)

    assert (drawn.starts, drawn.ends) == ("00:00:00:00", "00:00:04:00")


@given(documents(), st.data())
def test_map_survives_being_kept_as_json(document: Document, data: st.DataObject) -> None:
    session = read_edit_session(document)
    length = session.master.length
    start = data.draw(st.integers(0, length - 1))
    end = data.draw(st.integers(start + 1, length))
    drawn = tape_map(session.recorded(), session.bench, start=start, end=end, marks={"here": start})

    kept = json.loads(json.dumps(drawn.as_json()))

    assert kept == drawn.as_json()
    assert TapeMap.from_json(kept) == drawn


@given(documents())
def test_marks_are_states_that_are_not_clean_and_the_faults_beyond(document: Document) -> None:
    session = read_edit_session(document)
    tape = session.recorded()

    drawn = tape_map(tape, session.bench)

    assert drawn.faults is not None
    marks = [(mark.start, mark.end, mark.state, mark.edit) for mark in drawn.faults]
    states = [
        (piece.start, piece.end, state.state, state.edit)
        for state in play(tape, session.bench)
        if state.state != "clean"
        for piece in _told_apart(tape, state)
    ]
    beyond = [(each.start, each.end, each.kind, each.edit) for each in faults(tape, session.bench)]
    assert marks == sorted([*states, *beyond], key=itemgetter(0))


def _told_apart(tape: Tape, state: PlaybackState) -> list[Unpulsed]:
    if state.state == "no-control":
        return list(unpulsed(tape, state.start, state.end))
    return [Unpulsed(state.start, state.end, recorded=True)]


def test_blank_tape_is_told_from_what_was_recorded_without_pulses() -> None:
    tape = Tape.blank(400).with_pass(0, 200, "black")
    shots = Source("A", (Take(0, 400),))
    laid = record(tape, Insert(shots, 150, 250, 150, picture=True, sound=False), BENCH)

    faults = tape_map(laid, BENCH, start=100).faults

    assert faults is not None
    assert [(mark.start, mark.end, mark.label, mark.sentence) for mark in faults] == [
        (
            200,
            250,
            "no pulses",
            "recorded without pulses: nothing locks, and it can’t be used",
        ),
        (250, 400, "blank", "blank tape: snow, or muted"),
    ]


def test_stretch_without_picture_and_sound_is_told_from_one_without_a_picture() -> None:
    tape = Tape.blank(300).with_pass(0, 300, "black")
    nothing = Source("A", (Take(0, 120),))
    both = record(tape, Insert(nothing, 100, 150, 100, picture=True, sound=True), BENCH)
    picture = record(tape, Insert(nothing, 100, 150, 100, picture=True, sound=False), BENCH)

    assert [
        [fault.label for fault in tape_map(each, BENCH, start=120).faults or ()]
        for each in (both, picture)
    ] == [["nothing"], ["no picture"]]
