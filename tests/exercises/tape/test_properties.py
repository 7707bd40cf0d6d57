"""What is true of every session, whatever its edits."""

import json
from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from exercises.tape import Condition, Insert, play, read_edit_session, record, simulate
from tests.strategies import Document, documents, edits


@given(documents())
@settings(max_examples=60)
def test_states_cover_the_tape_once_and_neighbours_differ(document: Document) -> None:
    session = read_edit_session(document)

    states = session.played()

    assert (states[0].start, states[-1].end) == (0, session.master.length)
    for before, after in pairwise(states):
        assert before.start < before.end == after.start
        assert (before.state, before.edit) != (after.state, after.edit)


@given(documents())
@settings(max_examples=60)
def test_clean_has_no_cause_and_causes_are_edits(document: Document) -> None:
    session = read_edit_session(document)

    for state in session.played():
        if state.state is Condition.CLEAN:
            assert state.edit is None
        assert state.edit is None or 0 <= state.edit < len(session.edits)


@given(documents(), st.data())
@settings(max_examples=60)
def test_insert_never_changes_the_control_track(document: Document, data: st.DataObject) -> None:
    before = read_edit_session(document).recorded()
    document["edits"] = [*document["edits"], data.draw(edits(before.length, "insert"))]

    after = read_edit_session(document).recorded()

    assert after.control == before.control


@given(documents(), st.data())
@settings(max_examples=60)
def test_assemble_leaves_exactly_the_erase_gap_blank_behind_it(
    document: Document, data: st.DataObject
) -> None:
    before = read_edit_session(document).recorded()
    edit = data.draw(edits(before.length, "assemble"))
    document["edits"] = [*document["edits"], edit]
    session = read_edit_session(document)

    after = session.recorded()

    end = session.edits[-1].end
    gap_end = min(end + session.bench.erase_gap, after.length)
    for frame in range(end, gap_end):
        tracks = (after.control, after.picture, after.sound)
        assert [track.at(frame) for track in tracks] == [None, None, None]
    for frame in range(gap_end, after.length):
        for now, then in ((after.picture, before.picture), (after.sound, before.sound)):
            run, old = now.at(frame), then.at(frame)
            assert (run is None) == (old is None)
            assert not (run and old) or run.tail(frame).value == old.tail(frame).value
        assert (after.control.at(frame) is None) == (before.control.at(frame) is None)


@given(documents(), st.data())
@settings(max_examples=60)
def test_insert_never_touches_a_track_it_was_not_told(
    document: Document, data: st.DataObject
) -> None:
    session = read_edit_session(document)
    before = session.recorded()
    document["edits"] = [*document["edits"], data.draw(edits(before.length, "insert"))]
    insert = read_edit_session(document).edits[-1]
    assert isinstance(insert, Insert)

    after = record(before, insert, session.bench)

    assert insert.picture or after.picture == before.picture
    assert insert.sound or after.sound == before.sound


@given(documents())
@settings(max_examples=60)
def test_same_document_always_has_the_same_answer(document: Document) -> None:
    first = json.dumps(simulate(document))

    assert json.dumps(simulate(json.loads(json.dumps(document)))) == first


@given(documents())
@settings(max_examples=60)
def test_edits_leave_the_tape_they_were_made_on_as_it_was(document: Document) -> None:
    session = read_edit_session(document)
    untouched = read_edit_session(document | {"edits": []}).recorded()

    session.recorded()

    assert session.master == untouched
    assert play(session.master, session.bench) == play(untouched, session.bench)


@given(documents())
@settings(max_examples=100)
def test_runs_are_in_order_and_as_long_as_can_be(document: Document) -> None:
    tape = read_edit_session(document).recorded()

    for runs in (tape.picture.runs, tape.sound.runs):
        for before, after in pairwise(runs):
            assert before.start < before.end <= after.start
            length = before.end - before.start
            goes_on = before.value.goes_on(length, after.value)
            assert before.end < after.start or not goes_on
    for pulses, later in pairwise(tape.control.runs):
        assert pulses.start < pulses.end <= later.start
