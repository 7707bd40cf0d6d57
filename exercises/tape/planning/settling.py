"""Where a recording must begin so that both machines are locked where it matters."""

from collections.abc import Iterator

from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import Tape


def settled_start(
    target: Target, tape: Tape, strand: Strand, frame: int, *, assemble: bool
) -> int | None:
    """The latest edit in on the master from which ``frame`` is settled and plays steadily.

    It is earlier than ``frame`` where a run-up is too short there: the recording then
    begins over something else. None if there is no such place.
    """
    if settles(target, tape, strand, frame, frame, assemble=assemble):
        return frame
    for start in sorted(_points(target, tape, strand, frame), reverse=True):
        if settles(target, tape, strand, start, frame, assemble=assemble):
            return start
    return None


def settles(
    target: Target, tape: Tape, strand: Strand, start: int, frame: int, *, assemble: bool
) -> bool:
    """Whether ``frame`` is settled in a recording of the strand from ``start`` on."""
    bench = target.bench
    held = takes_between(target, strand, start, frame)
    if held is None or start < 0:
        return False
    first, last = held
    master = tape.run_up(start)
    if start + max(0, bench.lock - min(master, start - first)) > frame:
        return False
    if last > start and last + bench.relock > frame:
        return False
    if not assemble:
        return True
    phase = start - master if master >= bench.lock else start
    return phase + bench.relock <= frame


def cuts(target: Target) -> tuple[int, ...]:
    """Where a recording may have to begin or end: at the parts' edges, and a run-up before."""
    run_up = max(target.bench.lock, target.bench.relock)
    edges = {edge for part in target.parts for edge in (part.start, part.end)}
    early = {source_start(target, part.strand, part.start) for part in target.parts}
    edges |= {start for start in early if start is not None}
    edges |= {target.parts[number].start - run_up for number in target.heads}
    return tuple(sorted(edge for edge in edges if edge >= 0))


def source_start(target: Target, strand: Strand, frame: int) -> int | None:
    """The same as far as the source is concerned: with a master that always has run-up."""
    bench = target.bench
    for start in (frame, *(first - 1 for first in _takes_back(target, strand, frame))):
        held = takes_between(target, strand, start, frame)
        if held is None:
            return None
        first, last = held
        if start + max(0, bench.lock - (start - first)) <= frame and (
            last <= start or last + bench.relock <= frame
        ):
            return start
    return None


def _takes_back(target: Target, strand: Strand, frame: int) -> list[int]:
    """Where the takes that begin by this frame begin, the last one first."""
    return [start for start, _, _ in target.takes(strand) if start <= frame][::-1]


def takes_between(target: Target, strand: Strand, start: int, frame: int) -> tuple[int, int] | None:
    """Where the takes of ``start`` and of ``frame`` begin; None if blank tape lies between."""
    first, last, reached = None, None, start
    for begin, end, _ in target.takes(strand):
        if end <= start:
            continue
        if begin > reached:
            return None
        first, last, reached = begin if first is None else first, begin, end
        if frame < end:
            return first, last
    return None


def _points(target: Target, tape: Tape, strand: Strand, frame: int) -> Iterator[int]:
    """Where the answer can change: below each of these another rule decides."""
    yield frame - target.bench.lock
    yield frame - target.bench.relock
    for run in tape.control.laid:
        if run.start > frame:
            break
        yield run.start
        yield min(run.end, frame)
    for start in _takes_back(target, strand, frame):
        yield start - 1
