"""What is true of every plan: it does what it says, and no learner does it better."""

from collections.abc import Callable
from typing import Any

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from exercises.tape import (
    Assemble,
    Bench,
    Brief,
    Edit,
    Insert,
    Limits,
    Plan,
    Rate,
    Side,
    Source,
    Take,
    Tape,
    Wanted,
    judge,
    plan,
    record,
)

Draw = Callable[..., Any]

LENGTH = 30
BLACK = Source("black", (Take(0, 200),))
TRACKS = ((True, False), (False, True), (True, True))


@st.composite
def benches(draw: Draw) -> Bench:
    """Any that rolls; where everything is so short, a short shot is no flash."""
    lock, relock, gap = draw(st.integers(0, 4)), draw(st.integers(1, 3)), draw(st.integers(0, 4))
    return Bench(Rate.R25, lock, relock, gap, limits=Limits(flash_frames=0))


@st.composite
def reels(draw: Draw) -> dict[str, Source]:
    """Two source tapes of takes that touch."""
    sources = {"black": BLACK}
    for name in ("A", "B"):
        ends = sorted(draw(st.sets(st.integers(4, 40), min_size=1, max_size=3)))
        takes = [Take(start, end) for start, end in zip([0, *ends], ends, strict=False)]
        sources[name] = Source(name, tuple(takes))
    return sources


@st.composite
def recorded(draw: Draw, sources: dict[str, Source]) -> Edit:
    source = sources[draw(st.sampled_from(sorted(sources)))]
    frames = draw(st.integers(1, 9))
    first = draw(st.integers(0, max(0, min(30, source.takes[-1].end - frames))))
    assume(first + frames <= source.takes[-1].end)
    shot = source, first, first + frames, draw(st.integers(0, LENGTH - frames))
    if draw(st.booleans()):
        return Assemble(*shot)
    return Insert(*shot, *draw(st.sampled_from(TRACKS)))


@st.composite
def sittings(draw: Draw) -> tuple[Tape, dict[str, Source], Bench, list[Edit]]:
    """A master, source tapes, a bench, and what a learner recorded."""
    sources = draw(reels())
    tape = Tape.blank(LENGTH)
    striped = draw(st.integers(0, LENGTH))
    if striped:
        tape = tape.with_pass(0, striped, "black")
    return tape, sources, draw(benches()), draw(st.lists(recorded(sources), max_size=5))


def made(tape: Tape, edits: list[Edit] | tuple[Edit, ...], bench: Bench) -> Tape:
    for index, edit in enumerate(edits):
        tape = record(tape, edit, bench, index)
    return tape


def read_off(tape: Tape, bench: Bench) -> Brief:
    """A brief for all that plays cleanly, but black."""
    return Brief(tuple(_playing(tape, bench, "picture")), tuple(_playing(tape, bench, "sound")))


def _playing(tape: Tape, bench: Bench, side: Side) -> list[Wanted]:
    track = tape.picture if side == "picture" else tape.sound
    return [
        Wanted(
            side,
            run.value.source,
            run.tail(start).value.frame,
            run.tail(start).value.frame + end - start,
            start,
        )
        for run in track.runs
        for pulses in tape.control.runs
        for start in (max(run.start, pulses.start + bench.relock),)
        for end in (min(run.end, pulses.end),)
        if start < end and run.value.settled and run.value.source != "black"
    ]


@given(sittings())
def test_tape_fulfils_the_brief_that_is_read_off_it(
    sitting: tuple[Tape, dict[str, Source], Bench, list[Edit]],
) -> None:
    tape, sources, bench, edits = sitting
    finished = made(tape, edits, bench)
    brief = read_off(finished, bench)

    judgement = judge(brief, finished, before=finished, bench=bench)

    assert judgement.fulfilled
    assert plan(brief, finished, sources=sources, bench=bench).edits == ()  # type: ignore[union-attr]


@given(sittings())
@settings(max_examples=150)
def test_plan_is_never_worse_than_what_a_learner_did(
    sitting: tuple[Tape, dict[str, Source], Bench, list[Edit]],
) -> None:
    tape, sources, bench, edits = sitting
    finished = made(tape, edits, bench)
    brief = read_off(finished, bench)
    assume(judge(brief, finished, before=tape, bench=bench).fulfilled)

    found = plan(brief, tape, sources=sources, bench=bench)

    assert isinstance(found, Plan)
    judgement = judge(brief, made(tape, found.edits, bench), before=tape, bench=bench)
    assert judgement.fulfilled
    assert cost(found.edits) <= cost(edits)


def cost(edits: list[Edit] | tuple[Edit, ...]) -> tuple[int, int]:
    return len(edits), sum(edit.out - edit.in_ for edit in edits)
