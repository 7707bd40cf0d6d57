"""Cuts moved within their tolerance, where a run-up is too short by so little."""

from collections.abc import Iterator
from dataclasses import replace

from exercises.tape.bench import Bench
from exercises.tape.judging.brief import Brief, Wanted
from exercises.tape.judging.comparing import places, right
from exercises.tape.planning.settling import source_start
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import Side, Tape


def moved(target: Target) -> Brief:
    """The brief to plan for, without tolerances: a plan aims at the marks.

    A shot that the tape holds within its tolerance is wanted as it is. One whose run-up
    is too short begins later, by as little as it takes; the shot before it runs on.
    """
    brief = target.brief
    return replace(
        brief,
        picture=tuple(_moved(target, "picture")),
        sound=tuple(_moved(target, "sound")),
    )


def _moved(target: Target, side: Side) -> Iterator[Wanted]:
    held: Wanted | None = None
    for shot, before, _ in places(target.brief.on(side)):
        later = 0
        aimed = _as_it_is(target.before, shot)
        if aimed is None:
            later = _later(target, shot)
            aimed = replace(shot, in_=shot.in_ + later, at=shot.at + later, tolerance=0)
        if held:
            yield replace(held, out=held.out + later) if before else held
        held = aimed
    if held:
        yield held


def _as_it_is(tape: Tape, shot: Wanted) -> Wanted | None:
    run = tape.on(shot.track).laid.at(shot.at + shot.slack)
    if shot.tolerance == 0 or run is None or not right(run, shot):
        return None
    start, end = max(run.start, shot.at), min(run.end, shot.end)
    if start - shot.at > shot.slack or shot.end - end > shot.slack:
        return None
    first = run.value.frame + start - run.start
    return Wanted(shot.track, shot.source, first, first + end - start, start)


def _later(target: Target, shot: Wanted) -> int:
    """By how many frames the shot has to begin later, if its tolerance allows; else 0."""
    strand, bench = Strand(shot.source, shot.shift), target.bench
    for later in range(shot.slack + 1):
        frame = shot.at + later
        if frame >= _least(bench) and source_start(target, strand, frame) is not None:
            return later
    return 0


def _least(bench: Bench) -> int:
    return max(bench.lock, bench.relock)
