"""What is wanted of a tape, and what is missing from it: the judge behind every drill."""

from collections.abc import Iterable, Iterator
from dataclasses import asdict, dataclass
from enum import StrEnum
from itertools import pairwise

from exercises.drills.asks import Json
from exercises.tape import Bench, Laid, Run, Side, Tape


class Trouble(StrEnum):
    """Why a wanted frame is not there, worst first."""

    NO_PULSES = "no-pulses"
    BLANK = "blank"
    OTHER = "other"
    ROLL = "roll"
    UNSETTLED = "unsettled"
    CUT = "cut"


@dataclass(frozen=True, slots=True, kw_only=True)
class Want:
    """`[start, end)` of one track must play the source's frames from `frame` on, cleanly.

    `new` tells what is to be recorded from what is to stay; `rolls` that it rolls already,
    because its pulses have only just begun; `mixed` wants this picture mixed with another;
    `moved` is by how many frames what is to stay should move later.
    """

    track: Side
    start: int
    end: int
    source: str
    frame: int
    new: bool = False
    rolls: bool = False
    mixed: bool = False
    moved: int = 0

    def as_json(self) -> Json:
        return asdict(self)


@dataclass(frozen=True, slots=True)
class Miss:
    """`[start, end)` of a want that the tape does not give, and why."""

    want: Want
    trouble: Trouble
    start: int
    end: int


def playing(
    tape: Tape, bench: Bench, track: Side, start: int = 0, end: int | None = None
) -> Iterator[Want]:
    """What plays on a track, as wants that the tape as it is fulfils; unsettled copies don't."""
    end = tape.length if end is None else end
    for laid in tape.on(track).runs:
        for pulses in tape.control.runs:
            steady = pulses.start + bench.relock
            yield from _plays(track, laid, max(start, pulses.start), min(end, steady), rolls=True)
            yield from _plays(track, laid, max(start, steady), min(end, pulses.end), rolls=False)


def _plays(track: Side, laid: Run[Laid], start: int, end: int, *, rolls: bool) -> Iterator[Want]:
    first, last = max(laid.start, start), min(laid.end, end)
    if first < last and laid.value.settled:
        value = laid.tail(first).value
        yield Want(
            track=track,
            start=first,
            end=last,
            source=value.source,
            frame=value.frame,
            rolls=rolls,
        )


def misses(wants: Iterable[Want], tape: Tape, bench: Bench) -> Iterator[Miss]:
    """Every stretch of every want that the tape does not give, as long as can be."""
    for want in wants:
        held: Miss | None = None
        for start, end in _steps(want, tape, bench):
            trouble = _trouble(want, tape, bench, start)
            if held and held.trouble is trouble:
                held = Miss(want, trouble, held.start, end)
                continue
            if held:
                yield held
            held = Miss(want, trouble, start, end) if trouble else None
        if held:
            yield held


def given(wants: Iterable[Want], tape: Tape, bench: Bench) -> bool:
    """Whether the tape gives all that is wanted."""
    return next(misses(wants, tape, bench), None) is None


def _steps(want: Want, tape: Tape, bench: Bench) -> Iterator[tuple[int, int]]:
    """The want's range, cut wherever what the tape holds there may change."""
    cuts = {want.start, want.end}
    for pulses in tape.control.runs:
        cuts.update((pulses.start, pulses.start + bench.relock, pulses.end))
    for laid in tape.on(want.track).runs:
        cuts.update((laid.start, laid.end))
    inside = sorted(cut for cut in cuts if want.start <= cut <= want.end)
    yield from pairwise(inside)


def _trouble(want: Want, tape: Tape, bench: Bench, frame: int) -> Trouble | None:
    pulses, laid = tape.control.at(frame), tape.on(want.track).at(frame)
    if pulses is None:
        return Trouble.NO_PULSES
    if laid is None:
        return Trouble.BLANK
    value = laid.tail(frame).value
    if (value.source, value.frame) != (want.source, want.frame + frame - want.start):
        return Trouble.OTHER
    if frame < pulses.start + bench.relock and not want.rolls:
        return Trouble.ROLL
    if not value.settled:
        return Trouble.UNSETTLED
    return Trouble.CUT if want.mixed else None
