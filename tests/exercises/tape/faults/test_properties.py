"""What is true of the faults of every session, whatever its recordings."""

import json
from typing import Any

from hypothesis import given, settings

from exercises.tape import Fault, FaultKind, faults, read_edit_session, simulate
from tests.exercises.tape.faults.slow_faults import slow_flashes, slow_steps, slow_words
from tests.strategies import Document, documents, made_documents

WELL_MADE = {FaultKind.FLASH_FRAMES}


def found(document: Document) -> tuple[Fault, ...]:
    session = read_edit_session(document)
    return faults(session.recorded(), session.bench)


@given(made_documents())
@settings(max_examples=100)
def test_faults_lie_on_the_tape_in_order_and_are_beyond_their_limits(document: Document) -> None:
    session = read_edit_session(document)

    seen = found(document)

    assert [fault.start for fault in seen] == sorted(fault.start for fault in seen)
    for fault in seen:
        assert 0 <= fault.start < fault.end <= session.master.length
        assert fault.edit is None or 0 <= fault.edit < len(session.edits)
        assert 1 <= fault.severity <= 4
        assert fault.track == ("sound" if fault.kind in SOUND else "picture")
        beyond = fault.measured.value != fault.measured.limit
        assert beyond or fault.kind is FaultKind.FLASH_FRAMES


SOUND = {
    FaultKind.CLIPPED_WORD,
    FaultKind.STRAY_BREATH,
    FaultKind.SOUND_LEVEL_JUMP,
    FaultKind.WEAK_SOUND,
    FaultKind.DISTORTED_SOUND,
    FaultKind.PRESSED_SOUND,
    FaultKind.NOISY_PAUSES,
    FaultKind.SOUND_OUT_OF_STEP,
}


@given(documents())
def test_well_adjusted_bench_makes_no_faults_but_flash_frames(document: Document) -> None:
    assert {fault.kind for fault in found(document)} <= WELL_MADE


@given(made_documents())
@settings(max_examples=40)
def test_same_document_always_has_the_same_faults(document: Document) -> None:
    first = json.dumps(simulate(document))

    assert json.dumps(simulate(json.loads(json.dumps(document)))) == first


@given(made_documents())
@settings(max_examples=60)
def test_how_it_was_made_changes_neither_what_is_laid_nor_how_it_plays(document: Document) -> None:
    made, plain = read_edit_session(document), read_edit_session(plainly(document))

    assert made.played() == plain.played()
    assert made.recorded().control == plain.recorded().control


@given(made_documents())
@settings(max_examples=120)
def test_content_faults_are_those_found_frame_by_frame(document: Document) -> None:
    for recorded in document["master"]["recorded"]:
        recorded["what"] = "black"  # not a source, so that all marks are the takes'
        recorded.pop("marks", None)
    tape = read_edit_session(document).recorded()

    slow = slow_flashes(tape, 3) | slow_words(tape, document)

    assert {
        (fault.kind.value, fault.start, fault.end, fault.measured.value)
        for fault in found(document)
        if fault.kind in (FaultKind.FLASH_FRAMES, FaultKind.CLIPPED_WORD, FaultKind.STRAY_BREATH)
    } == slow


@given(made_documents())
@settings(max_examples=100)
def test_frames_out_of_step_are_those_found_frame_by_frame(document: Document) -> None:
    for recorded in document["master"]["recorded"]:
        recorded["what"] = "black"
    tape = read_edit_session(document).recorded()

    spread = {
        frame
        for fault in found(document)
        if fault.kind is FaultKind.SOUND_OUT_OF_STEP
        for frame in range(fault.start, fault.end)
    }

    assert spread == {
        frame for _, start, end, _ in slow_steps(tape, document) for frame in range(start, end)
    }


def plainly(document: Document) -> dict[str, Any]:
    """The same session without a word on how it was made."""
    keys = ("levels", "chain", "marks", "sync", "recorder")
    machines = ("player", "recorder", "picture_level", "sound_level")
    plain: Document = json.loads(json.dumps(document))
    for part in (*plain["master"]["recorded"], *_takes(plain)):
        for key in keys:
            part.pop(key, None)
    for edit in plain["edits"]:
        for key in machines:
            edit.pop(key, None)
    return plain


def _takes(document: Document) -> list[Document]:
    return [take for source in document["sources"].values() for take in source["takes"]]
