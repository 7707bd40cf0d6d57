"""A block `levels`: a scale, with named places and stretches on it.

    scale    IRE or VU
    rate     of IRE only: black stands at 7.5 at 29.97, at 0 at 25
    marks    {at, name}
    ranges   {from, to, name}

A level is a number; on IRE also a name of `scales`.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any, ClassVar, NamedTuple

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from course.lessons.blocks.scales import LevelScale, scale_of
from course.lessons.blocks.spread import spread
from exercises.tape import Rate

SCALES, RATES = ("IRE", "VU"), ("25", "29.97")
LETTERS = 32  # as many as there is room for beside the scale

# The drawing, in its own units: as many across as a phone has pixels.
TOP, HEIGHT = 14, 300
AXIS, BAND = 58, 14  # where the scale stands, how wide a stretch is
LINE, TICK = 32, 16  # how high a name with its level is, and how far ticks are apart at least
MOST = HEIGHT // LINE + 1


class Level(NamedTuple):
    """A place; or a stretch, if `end` is another level than `at`."""

    name: str
    at: float
    end: float

    @property
    def is_range(self) -> bool:
        return self.at != self.end


@dataclass(frozen=True, kw_only=True)
class LevelsFigure(Figure):
    part: ClassVar[str] = "levels"

    scale: str
    rate: str
    levels: tuple[Level, ...]

    @cached_property
    def reading(self) -> LevelScale:
        return scale_of(self.scale, Rate(self.rate))

    def texts(self) -> list[str]:
        return [*super().texts(), *(level.name for level in self.levels)]

    def named(self, name: str) -> Level:
        return next(level for level in self.levels if level.name == name)

    def words(self, level: Level) -> str:
        """Where a place or a stretch is: `−10 to 0 VU`."""
        if not level.is_range:
            return self.reading.told(level.at)
        unit = self.reading.unit
        return f"{self.reading.told(level.at).removesuffix(f' {unit}')} to " + self.reading.told(
            level.end
        )

    def sentences(self) -> list[str]:
        first, last = map(self.reading.told, (self.reading.least, self.reading.most))
        return [f"A scale from {first} to {last}.", *map(self._sentence, self._from_the_top)]

    def _sentence(self, level: Level) -> str:
        if level.is_range:
            return f"From {self.words(level)}: {level.name}."
        return f"At {self.words(level)}: {level.name}."

    @property
    def _from_the_top(self) -> list[Level]:
        return sorted(self.levels, key=lambda level: (-level.end, -level.at))

    @cached_property
    def drawing(self) -> Mapping[str, Any]:
        """Numbers for the template."""
        lanes = dict(self._lanes())
        beside = AXIS + 10 + BAND * (max(lanes.values(), default=-1) + 1)
        ordered = sorted(self.levels, key=lambda level: -(level.at + level.end))
        wanted = [self._y((level.at + level.end) / 2, level) for level in ordered]
        placed = spread(wanted, LINE, TOP, TOP + HEIGHT)
        items = [
            self._item(level, lanes.get(level.name), wanted_y, y, beside)
            for level, wanted_y, y in zip(ordered, wanted, placed, strict=True)
        ]
        ticks = [
            {"y": self._y(tick), "name": self.reading.told(tick).removesuffix(self.reading.unit)}
            for tick in self._ticks()
        ]
        return {"items": items, "ticks": ticks, "axis": AXIS, "unit": self.reading.unit}

    def _item(
        self, level: Level, lane: int | None, wanted: float, y: float, beside: int
    ) -> Mapping[str, Any]:
        top, bottom = self._y(level.end), self._y(level.at)
        left = AXIS + 6 + BAND * (lane or 0)
        return {
            "name": level.name,
            "words": self.words(level),
            "is_range": level.is_range,
            "x": left,
            "top": top,
            "height": round(bottom - top, 1),
            "from": left + BAND - 4 if level.is_range else AXIS - 6,
            "beside": beside,
            "wanted": wanted,
            "y": y,
            "text_x": beside + 16,
        }

    def _lanes(self) -> Iterator[tuple[str, int]]:
        """Which lane each stretch is drawn in, so that none touches another."""
        ends: list[float] = []
        for level in sorted((each for each in self.levels if each.is_range), key=lambda e: e.at):
            lane = next((n for n, end in enumerate(ends) if end < level.at), len(ends))
            ends[lane : lane + 1] = [level.end]
            yield level.name, lane

    def _y(self, level: float, of: Level | None = None) -> float:
        """From the top; the middle of a stretch is that of its drawing."""
        if of is not None and of.is_range:
            return round((self._y(of.at) + self._y(of.end)) / 2, 1)
        return round(TOP + HEIGHT * (1 - self.reading.height(level)), 1)

    def _ticks(self) -> Iterator[float]:
        """From the top, leaving out those that have no room."""
        last = -HEIGHT
        for tick in reversed(self.reading.ticks):
            if self._y(tick) - last >= TICK:
                last = round(self._y(tick))
                yield tick


def read_levels(given: Given) -> LevelsFigure:
    given.only(*KEYS, "scale", "rate", "marks", "ranges")
    scale = given.one_of("scale", SCALES)
    rate = given.one_of("rate", RATES, default="25")
    if scale == "VU" and "rate" in given:
        raise given.problem("rate", "A VU scale is the same at every rate; leave rate out.")
    levels = tuple(_levels(given, scale_of(scale, Rate(rate))))
    if not levels:
        raise given.problem("marks", "There are neither marks nor ranges on the scale.")
    if len(levels) > MOST:
        raise given.problem("marks", f"There is room for {MOST} marks and ranges.")
    if len({level.name for level in levels}) < len(levels):
        raise given.problem("marks", "Two marks or ranges have the same name.")
    return LevelsFigure(**common(given), scale=scale, rate=rate, levels=levels)


def _levels(given: Given, scale: LevelScale) -> Iterator[Level]:
    for mark in given.tables("marks"):
        mark.only("at", "name")
        at = _level(mark, "at", scale)
        yield Level(mark.text("name", most=LETTERS), at, at)
    for stretch in given.tables("ranges"):
        stretch.only("from", "to", "name")
        first, last = _level(stretch, "from", scale), _level(stretch, "to", scale)
        if first >= last:
            raise stretch.problem("to", f"to{stretch.what} is not above from.")
        yield Level(stretch.text("name", most=LETTERS), first, last)


def _level(given: Given, key: str, scale: LevelScale) -> float:
    value = given.values.get(key)
    if isinstance(value, str) and value in scale.places:
        return scale.places[value]
    if not isinstance(value, int | float) or isinstance(value, bool):
        known = "".join(f", “{place}”" for place in scale.places)
        raise given.problem(key, f"{key}{given.what} is a number{known}.")
    if not scale.least <= value <= scale.most:
        ends = f"{scale.told(scale.least)} to {scale.told(scale.most)}"
        raise given.problem(key, f"{key}{given.what} is not on the scale, {ends}.")
    return value
