"""Beliefs over random sessions: none of them changes nothing, and no belief is the true model."""

from collections.abc import Collection
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from exercises.drills.beliefs import BELIEFS, Trial, as_played, recorded
from exercises.drills.setting.change import Change, Mode
from exercises.drills.setting.draw import Draw
from exercises.tape import (
    SIDES,
    Bench,
    Edit,
    EditSession,
    Insert,
    Rate,
    Side,
    Source,
    Take,
    Tape,
    read_edit_session,
    record,
)
from tests.strategies import documents

SOME = st.sets(st.sampled_from(sorted(BELIEFS)), max_size=4)
QUICKLY = settings(max_examples=60, deadline=None)


def mode_of(edit: Edit) -> Mode:
    if not isinstance(edit, Insert):
        return Mode.ASSEMBLE
    if edit.picture and edit.sound:
        return Mode.INSERT_BOTH
    return Mode.INSERT_PICTURE if edit.picture else Mode.INSERT_SOUND


def expected(session: EditSession, beliefs: Collection[str]) -> Tape:
    """The master once every edit of a session is made, as a believer expects it."""
    tape = session.master
    for edit in session.edits:
        mode = mode_of(edit)
        change = Change(
            source=edit.source, in_=edit.in_, out=edit.out, at=edit.at, tracks=mode.tracks
        )
        tape = recorded(Trial(tape, change, mode, session.bench), beliefs)
    return as_played(tape, session.bench, beliefs)


@QUICKLY
@given(documents(most=4))
def test_no_belief_is_the_true_model(document: dict[str, object]) -> None:
    session = read_edit_session(document)
    tape = session.master
    for edit in session.edits:
        tape = record(tape, edit, session.bench)

    assert expected(session, ()) == tape


@QUICKLY
@given(documents(most=4), SOME)
def test_believer_expects_a_tape_of_the_same_length_without_overlaps(
    document: dict[str, object], beliefs: set[str]
) -> None:
    session = read_edit_session(document)
    tape = expected(session, beliefs)

    for track in (tape.control, tape.picture, tape.sound):
        edges = [edge for run in track.runs for edge in (run.start, run.end)]
        assert edges == sorted(edges)
        assert all(0 <= edge <= session.master.length for edge in edges)


@QUICKLY
@given(documents(most=4), SOME)
def test_order_in_which_beliefs_are_named_does_not_matter(
    document: dict[str, object], beliefs: set[str]
) -> None:
    session = read_edit_session(document)

    assert expected(session, sorted(beliefs)) == expected(session, sorted(beliefs, reverse=True))


@QUICKLY
@given(documents(most=4), SOME)
def test_belief_about_modes_that_are_not_used_changes_nothing(
    document: dict[str, object], beliefs: set[str]
) -> None:
    session = read_edit_session(document)
    used = {mode_of(edit) for edit in session.edits}
    beside = {
        belief
        for belief in beliefs
        if not used & set(BELIEFS[belief].modes) and BELIEFS[belief].played is None
    }

    assert expected(session, beside) == expected(session, ())


BENCH = replace(Bench.default(Rate.R25), lock=8, relock=4, erase_gap=6)
SOURCE = Source("A", (Take(0, 10), Take(10, 200)))  # takes that touch


@cache
def attempts() -> list[Trial]:
    """A few hundred single edits on masters of two passes, some meant for one track alone."""
    draw, found = Draw(7), []
    for _ in range(300):
        first, gap = draw.whole(10, 40), draw.whole(0, 8)
        master = Tape.blank(100).with_pass(0, first, "black")
        master = master.with_pass(first + gap, first + gap + draw.whole(5, 30), "X")
        in_ = draw.whole(0, 20)
        tracks: tuple[Side, ...] = draw.pick((SIDES, ("picture",), ("sound",)))
        change = Change(
            source=SOURCE,
            in_=in_,
            out=in_ + draw.whole(3, 15),
            at=draw.whole(0, 60),
            tracks=tracks,
        )
        found.append(Trial(master, change, draw.pick(tuple(Mode)), BENCH, draw.whole(0, 4)))
    return found


def outcome(trial: Trial, beliefs: Collection[str]) -> Tape:
    return as_played(recorded(trial, beliefs), BENCH, beliefs)


NONE = "no belief"


@cache
def outcomes() -> list[dict[str, Tape]]:
    """Of each attempt, what is expected of it by belief."""
    return [{held: outcome(trial, (held,)) for held in (NONE, *BELIEFS)} for trial in attempts()]


@pytest.mark.parametrize("belief", BELIEFS)
def test_no_belief_changes_nothing(belief: str) -> None:
    changed = [found for found in outcomes() if found[belief] != found[NONE]]

    assert len(changed) > 5


INCLUDES = {
    ("sound-needs-no-pulses", "plays-without-pulses")
}  # the second expects all of the first


@pytest.mark.parametrize("belief", BELIEFS)
def test_each_belief_expects_what_no_other_does(belief: str) -> None:
    others = [each for each in BELIEFS if each != belief and (belief, each) not in INCLUDES]
    alone = [
        found
        for found in outcomes()
        if found[belief] not in [found[other] for other in (NONE, *others)]
    ]

    assert alone
