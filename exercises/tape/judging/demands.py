"""What a tape must play, frame by frame, and why it doesn't: the judge behind every drill."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any, Self

from exercises.tape.bench import Bench
from exercises.tape.judging.brief import Wanted
from exercises.tape.judging.comparing import right
from exercises.tape.judging.trouble import TROUBLES, Trouble
from exercises.tape.passages import Passage, passages
from exercises.tape.playback import control_of, picture_of, sound_of
from exercises.tape.tape import Side, Tape


@dataclass(frozen=True, slots=True, kw_only=True)
class Demand(Wanted):
    """A wanted shot that must play cleanly, whoever recorded it.

    `new` tells what is to be recorded from what is to stay; `rolls` that it rolls already,
    because its pulses have only just begun; `mixed` wants this picture mixed with another;
    `moved` is by how many frames what is to stay should move later.
    """

    new: bool = False
    rolls: bool = False
    mixed: bool = False
    moved: int = 0

    @classmethod
    def over(cls, track: Side, start: int, end: int, source: str, frame: int, **flags: Any) -> Self:
        """The source's frames from `frame` on, wanted over `[start, end)` of a track."""
        return cls(track, source, frame, frame + end - start, start, **flags)

    def as_json(self) -> dict[str, Any]:
        place = {"track": self.track, "start": self.at, "end": self.end}
        return {
            **place,
            "source": self.source,
            "frame": self.in_,
            "new": self.new,
            "rolls": self.rolls,
            "mixed": self.mixed,
            "moved": self.moved,
        }

    @classmethod
    def from_json(cls, kept: dict[str, Any]) -> Self:
        return cls.over(**kept)


@dataclass(frozen=True, slots=True)
class Miss:
    """`[start, end)` of what is demanded that the tape does not give, and why."""

    want: Demand
    trouble: Trouble
    start: int
    end: int


def playing(
    tape: Tape, bench: Bench, side: Side, start: int = 0, end: int | None = None
) -> Iterator[Demand]:
    """What plays on a side, as demands that the tape as it is meets; unsettled copies don't."""
    for passage in passages(tape, start, end, relock=bench.relock, sides=(side,)):
        laid = passage.laid(side)
        if laid and laid.settled and passage.pulses:
            last = laid.frame + passage.end - passage.start
            yield Demand(side, laid.source, laid.frame, last, passage.start, rolls=passage.rolls)


def misses(demands: Iterable[Demand], tape: Tape, bench: Bench) -> Iterator[Miss]:
    """Every stretch of every demand that the tape does not give, as long as can be."""
    for demand in demands:
        held: Miss | None = None
        along = passages(tape, demand.at, demand.end, relock=bench.relock, sides=(demand.track,))
        for passage in along:
            trouble = trouble_of(passage, demand)
            if held and held.trouble is trouble:
                held = Miss(demand, trouble, held.start, passage.end)
                continue
            if held:
                yield held
            held = Miss(demand, trouble, passage.start, passage.end) if trouble else None
        if held:
            yield held


def met(demands: Iterable[Demand], tape: Tape, bench: Bench) -> bool:
    """Whether the tape gives all that is demanded."""
    return next(misses(demands, tape, bench), None) is None


def first_miss(demands: Iterable[Demand], tape: Tape, bench: Bench) -> int | None:
    """The first frame that is not as it should be."""
    first: int | None = None
    for demand in demands:
        if first is None or demand.at < first:
            miss = next(misses((demand,), tape, bench), None)
            first = miss.start if miss and (first is None or miss.start < first) else first
    return first


def trouble_of(passage: Passage, demand: Demand) -> Trouble | None:
    """Why a passage of a tape is not what is demanded there; the worst reason."""
    side = picture_of if demand.track == "picture" else sound_of
    control, own = TROUBLES[control_of(passage)], TROUBLES[side(passage)]
    run = passage.on(demand.track)
    if control is Trouble.NO_PULSES or run is None:
        return control if control is Trouble.NO_PULSES else Trouble.BLANK
    if not right(run, demand):
        return Trouble.OTHER
    if control and not demand.rolls:
        return control
    return own or (Trouble.CUT if demand.mixed else None)
