"""The tape map: three tracks over time, faults marked beneath, ready to draw.

A map is made from a tape, kept with an attempt as JSON, and drawn by a template; it knows
no HTML.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from exercises.tape.bench import Bench
from exercises.tape.errors import TapeError
from exercises.tape.map import drawing
from exercises.tape.map.parts import FaultMark, Lane, Mark, of_row, row
from exercises.tape.map.ruler import ticks
from exercises.tape.map.window import Window
from exercises.tape.tape import Tape


@dataclass(frozen=True, slots=True, kw_only=True)
class TapeMap:
    """A window ``[start, end)`` of a tape. ``faults`` is None where they are not to be shown."""

    start: int
    end: int
    starts: str
    ends: str
    lanes: tuple[Lane, ...]
    faults: tuple[FaultMark, ...] | None
    ticks: tuple[Mark, ...]
    marks: tuple[Mark, ...]

    def described(self) -> tuple[str, ...]:
        """The map in a few sentences, for who can't see it; nothing the drawing doesn't show."""
        return (
            f"The tape from {self.starts} to {self.ends}.",
            *(f"{_begun(mark.name)} at {mark.at}." for mark in self.marks),
            *(lane.described() for lane in self.lanes),
            *self._faults_described(),
        )

    def _faults_described(self) -> Iterator[str]:
        if self.faults is None:
            return
        if not self.faults:
            yield "All of it plays cleanly."
        for fault in self.faults:
            yield f"From {fault.starts} to {fault.ends}, {fault.sentence}."

    def as_json(self) -> dict[str, Any]:
        return {
            "window": [self.start, self.end, self.starts, self.ends],
            "lanes": [lane.as_json() for lane in self.lanes],
            "faults": None if self.faults is None else [row(fault) for fault in self.faults],
            "ticks": [row(tick) for tick in self.ticks],
            "marks": [row(mark) for mark in self.marks],
        }

    @classmethod
    def from_json(cls, kept: Mapping[str, Any]) -> "TapeMap":
        start, end, starts, ends = kept["window"]
        faults = kept["faults"]
        return cls(
            start=start,
            end=end,
            starts=starts,
            ends=ends,
            lanes=tuple(Lane.from_json(lane) for lane in kept["lanes"]),
            faults=None if faults is None else tuple(of_row(FaultMark, each) for each in faults),
            ticks=tuple(of_row(Mark, tick) for tick in kept["ticks"]),
            marks=tuple(of_row(Mark, mark) for mark in kept["marks"]),
        )


def tape_map(
    tape: Tape,
    bench: Bench,
    *,
    start: int = 0,
    end: int | None = None,
    names: Mapping[str, str] | None = None,
    marks: Mapping[str, int] | None = None,
    faults: bool = True,
) -> TapeMap:
    """The map of ``[start, end)`` of a tape: of all of it, if not told.

    ``names`` says what to call a source on the map, ``marks`` which frames have a name;
    those outside the window are left out. A map for a question, which must not give the
    answer away, is made with ``faults=False``.
    """
    end = tape.length if end is None else end
    if not 0 <= start < end <= tape.length:
        raise TapeError(f"A window from {start} to {end} does not lie on a tape of {tape.length}.")
    window = Window(start, end, bench.rate, bench.drop_frame)
    named = names or {}
    return TapeMap(
        start=start,
        end=end,
        starts=window.code(start),
        ends=window.code(end),
        lanes=(
            Lane("picture", tuple(drawing.copies(tape.picture, window, named))),
            Lane("sound", tuple(drawing.copies(tape.sound, window, named))),
            Lane("control", tuple(drawing.pulses(tape.control, window))),
        ),
        faults=tuple(drawing.faults(tape, bench, window)) if faults else None,
        ticks=tuple(
            window.mark(at, window.code(at))
            for at in ticks(start, end, bench.rate, bench.drop_frame)
        ),
        marks=tuple(
            window.mark(at, name) for name, at in (marks or {}).items() if start <= at <= end
        ),
    )


def _begun(name: str) -> str:
    """A name as a sentence begins with it."""
    return name[:1].upper() + name[1:]
