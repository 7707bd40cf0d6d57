"""A block `head-and-track`: a piece of tape, and where a picture head runs on it.

tracking  percent of a stripe that the head is off its middle; positive is to the right
stretch   parts in 10,000 by which the tape is longer than when it was recorded
lines     the line over each drawing, where one of those is a pair
rate      25 or 29.97
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, ClassVar

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from exercises.drills.kinds.set_tracking.seen import seen
from exercises.signal.lines import Lines
from exercises.tape import Rate
from exercises.tape.geometry import envelope_loss

RATES = ("25", "29.97")
MOST = {"tracking": 100, "stretch": 20}  # either way

# The drawing, in its own units: as many across as a phone has pixels.
TOP, BOTTOM = 44, 154  # of the picture tracks
SLANT, STRIPE, LEFT = 58, 40, 108  # how far a stripe leans, its width, where the head's begins
NEIGHBOURS = range(-5, 7)


@dataclass(frozen=True, kw_only=True)
class Running:
    """One drawing: how the head runs, and the line over it in a pair."""

    line: str
    tracking: int
    stretch: int
    rate: str

    @property
    def signal(self) -> int:
        """Percent of its stripe that the head reads."""
        return 100 - abs(self.tracking)

    @property
    def step(self) -> float:
        """µs where the heads change over: so much of a field as the tape is longer."""
        return self.stretch / 10_000 * Lines.of(Rate(self.rate)).field * 1000

    def sentences(self) -> Iterator[str]:
        yield self._path()
        yield self._signal()
        yield f"A monitor shows: {seen(self.tracking)}"
        if self.stretch:
            longer = "longer" if self.stretch > 0 else "shorter"
            parts = "part" if abs(self.stretch) == 1 else "parts"
            yield (
                f"The tape is {longer} than it was by {abs(self.stretch)} {parts} in 10,000. "
                f"{self.told_step()}"
            )

    def told_step(self) -> str:
        return f"Where the heads change over: a step of {abs(self.step):.1f} µs."

    def _path(self) -> str:
        if not self.tracking:
            return "The head runs along the middle of its stripe."
        side = "right" if self.tracking > 0 else "left"
        return f"The head runs {abs(self.tracking)} % of a stripe to the {side} of the middle."

    def _signal(self) -> str:
        if self.signal == 100:
            return "It reads all of its stripe."
        if not self.signal:
            return "It reads nothing of its stripe."
        down = envelope_loss(self.tracking) / 10
        return f"It reads {self.signal} % of its stripe: the signal is {down:.1f} dB down."

    @property
    def drawing(self) -> Mapping[str, Any]:
        """Numbers for the template."""
        end = TOP - (4 * (self.stretch > 0) - 4 * (self.stretch < 0) + 0.4 * self.stretch)
        off = STRIPE * self.tracking / 100
        left = LEFT + max(0.0, off)
        middle = LEFT + off + STRIPE / 2
        return {
            "height": 226 if self.stretch else 206,
            "edges": [_edge(LEFT + STRIPE * number, end) for number in NEIGHBOURS],
            "own": _stripe(LEFT, STRIPE, end),
            "read": _stripe(left, STRIPE * self.signal / 100, TOP) if self.signal else "",
            "path": _stripe(LEFT + off, STRIPE, TOP),
            "arrow": f"M{middle + 8:g} {BOTTOM - 16}L{middle + SLANT - 9:g} {TOP + 16}",
            "tip": f"M{middle + SLANT - 4:g} {TOP + 7}l-12 8l11 6z",
            "head": middle - STRIPE / 2,
            "name_x": LEFT + off + STRIPE + SLANT + 6,
            "signal": self._signal() if self.tracking else self._path(),
            "step": self.told_step() if self.stretch else "",
        }


def _edge(x: float, end: float) -> str:
    lean = SLANT * (BOTTOM - end) / (BOTTOM - TOP)
    return f"M{x:g} {BOTTOM}L{x + lean:g} {end:g}"


def _stripe(x: float, width: float, end: float) -> str:
    lean = SLANT * (BOTTOM - end) / (BOTTOM - TOP)
    return f"M{x:g} {BOTTOM}h{width:g}L{x + width + lean:g} {end:g}h{-width:g}Z"


@dataclass(frozen=True, kw_only=True)
class HeadAndTrack(Figure):
    part: ClassVar[str] = "head-and-track"

    runs: tuple[Running, ...]

    def sentences(self) -> list[str]:
        told = [
            "A piece of tape: the sound track along the upper edge, the picture tracks slanted "
            "across the middle, the control track along the lower edge.",
            "Stripes are drawn straight, and steeper and wider than they are.",
        ]
        for run in self.runs:
            line = f"{run.line.rstrip('.')}. " if run.line else ""
            told.append(line + " ".join(run.sentences()))
        return told

    def texts(self) -> list[str]:
        return [*super().texts(), *(run.line for run in self.runs if run.line)]


def read_head_and_track(given: Given) -> HeadAndTrack:
    given.only(*KEYS, *MOST, "lines", "rate")
    rate = given.one_of("rate", RATES, default="25")
    numbers = {key: _numbers(given, key) for key in MOST}
    count = max(map(len, numbers.values()))
    lines = given.values.get("lines", [""] if count == 1 else None)
    if not _are_lines(lines, count):
        raise given.problem("lines", "A pair has lines, one over each drawing; one alone has none.")
    runs = [
        Running(line=line, rate=rate, **{key: (each * 2)[n] for key, each in numbers.items()})
        for n, line in enumerate(lines)
    ]
    return HeadAndTrack(**common(given), runs=tuple(runs))


def _numbers(given: Given, key: str) -> list[int]:
    """One whole number, or two."""
    value, most = given.values.get(key, 0), MOST[key]
    numbers = value if isinstance(value, list) else [value]
    if not 1 <= len(numbers) <= 2 or not all(type(n) is int and abs(n) <= most for n in numbers):
        raise given.problem(key, f"{key} is a whole number from −{most} to {most}, or two of them.")
    return numbers


def _are_lines(lines: object, count: int) -> bool:
    if count == 1:
        return lines == [""]
    return (
        isinstance(lines, list)
        and len(lines) == count
        and all(isinstance(line, str) and line.strip() for line in lines)
    )
