"""How far a tape is from its target."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import chain

from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.judging.ranges import merged, overlapping
from exercises.tape.judging.stretches import side_by_side, stretches
from exercises.tape.planning.target import Target, WantedPart
from exercises.tape.runs import Run
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.track import Laid

Ranges = tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Stand:
    """What a tape still lacks of each part, by number, and what lies where it must not."""

    missing: dict[int, Ranges]
    extra: tuple[tuple[Side, int, int], ...]

    @property
    def done(self) -> bool:
        return not (self.missing or self.extra)


def stand(target: Target, tape: Tape) -> Stand:
    return Stand(_missing(target, tape, range(len(target.parts))), _extra(target, tape))


def stand_after(target: Target, former: Stand, edit: Edit, tape: Tape) -> Stand:
    """How the tape stands after the edit: only what the edit reached is looked at again."""
    reach = edit.end
    if isinstance(edit, Assemble):
        reach += target.bench.erase_gap + target.bench.relock
    reached = [
        number
        for number, part in enumerate(target.parts)
        if part.start < reach and edit.at < part.end
    ]
    missing = {n: lack for n, lack in former.missing.items() if n not in reached}
    missing |= _missing(target, tape, reached)
    extra = former.extra
    if extra or any(_spills(target, edit, side) for side in SIDES):
        extra = _extra(target, tape)
    return Stand(missing, extra)


def _spills(target: Target, edit: Edit, side: Side) -> bool:
    """Whether the edit lays anything but black where nothing new may lie."""
    if edit.source.name == target.brief.black or not lays(edit, side):
        return False
    return any(start < edit.end and edit.at < end for start, end in target.free[side])


def lays(edit: Edit, side: Side) -> bool:
    """Whether the edit records on this track."""
    if isinstance(edit, Insert):
        return edit.picture if side == "picture" else edit.sound
    return True


def _missing(target: Target, tape: Tape, numbers: Iterable[int]) -> dict[int, Ranges]:
    lacks = ((number, lack(target, tape, target.parts[number])) for number in numbers)
    return {number: ranges for number, ranges in lacks if ranges}


def lack(target: Target, tape: Tape, part: WantedPart) -> Ranges:
    """The frames of a part that the tape does not hold, or does not play cleanly."""
    run, pulses = tape.on(part.side).laid.at(part.start), tape.control.at(part.start)
    if run and pulses and run.end >= part.end and pulses.end >= part.end:
        steady = pulses.start + target.bench.relock <= part.start
        if steady and _right(target, part, run) and not target.spoiled[part.side]:
            return ()
    return tuple(merged(chain(_lacking(target, tape, part), _spoiled(target, tape, part))))


def _lacking(target: Target, tape: Tape, part: WantedPart) -> Iterator[tuple[int, int]]:
    for start, end, run in stretches(tape.on(part.side).laid, part.start, part.end):
        if run is None or not _right(target, part, run):
            yield start, end
            continue
        for first, last, pulses in stretches(tape.control.laid, start, end):
            steady = last if pulses is None else pulses.start + target.bench.relock
            if steady > first:
                yield first, min(steady, last)


def _spoiled(target: Target, tape: Tape, part: WantedPart) -> Iterator[tuple[int, int]]:
    """Where the part lies as it always did, with a fault that another copy may not have."""
    was, now = target.before.on(part.side), tape.on(part.side)
    for start, end in overlapping(target.spoiled[part.side], part.start, part.end):
        for old, new in side_by_side(was.laid, now.laid, start, end):
            if old.value == new.value:
                yield old.start, old.end


def _right(target: Target, part: WantedPart, run: Run[Laid]) -> bool:
    laid, (source, shift) = run.value, part.strand
    highest = target.brief.highest_generation
    return (
        laid.source == source
        and run.start - laid.frame == shift
        and laid.settled
        and (highest is None or laid.generation <= highest)
    )


def _extra(target: Target, tape: Tape) -> tuple[tuple[Side, int, int], ...]:
    found: list[tuple[Side, int, int]] = []
    for side in SIDES:
        was, now = target.before.on(side), tape.on(side)
        new = (
            (after.start, after.end)
            for start, end in target.free[side]
            for before, after in side_by_side(was.laid, now.laid, start, end)
            if after.run
            and after.run.value.source != target.brief.black
            and before.value != after.value
        )
        found += ((side, start, end) for start, end in merged(new))
    return tuple(found)
