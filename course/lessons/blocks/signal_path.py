"""A block `signal-path`: boxes on a grid, and what goes from one to the other.

boxes    {name = [column, row]}, from 1
links    {from, to, carries, label}; carries is one of SIGNALS, the label may be left out
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import combinations, pairwise
from textwrap import wrap
from typing import Any, ClassVar, NamedTuple

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from course.lessons.blocks.routes import (
    HIGH,
    STEP_X,
    STEP_Y,
    WIDE,
    Cell,
    RoutePoint,
    Way,
    meet,
    way,
)
from exercises.drills.setting.phrases import begun, listed

SIGNALS = ("picture", "sound", "control", "sync")  # each its own lane, in this order
COLUMNS, ROWS = 4, 6
NAME_LINE, LABEL = 14, 14  # letters that there is room for
MARGIN, ARROW = 6, 9


class Link(NamedTuple):
    source: str
    target: str
    carries: str
    label: str


@dataclass(frozen=True, kw_only=True)
class SignalPath(Figure):
    part: ClassVar[str] = "signal-path"

    boxes: Mapping[str, tuple[int, int]]
    links: tuple[Link, ...]

    def texts(self) -> list[str]:
        labels = [link.label for link in self.links if link.label != link.carries]
        return [*super().texts(), *self.boxes, *labels]

    def sentences(self) -> list[str]:
        return [
            f"There are {len(self.boxes)} boxes: {listed(list(self.boxes))}.",
            *map(self._sentence, self.links),
        ]

    def _sentence(self, link: Link) -> str:
        label = f", marked “{link.label}”," if link.label != link.carries else ""
        return f"{begun(link.carries)}{label} goes from “{link.source}” to “{link.target}”."

    def cell(self, box: str) -> Cell:
        column, row = self.boxes[box]
        return column - 1, row - 1

    def way(self, link: Link) -> Way:
        cells = {self.cell(box) for box in self.boxes}
        ends = self.cell(link.source), self.cell(link.target)
        return way(*ends, SIGNALS.index(link.carries), cells)

    @cached_property
    def drawing(self) -> Mapping[str, Any]:
        """Numbers for the template."""
        ways = [self.way(link) for link in self.links]
        corners = [RoutePoint(*_corner(self.cell(box))) for box in self.boxes]
        far = [RoutePoint(corner.x + WIDE, corner.y + HIGH) for corner in corners]
        xs, ys = zip(*corners, *far, *(point for each in ways for point in each), strict=True)
        left, top = min(xs) - MARGIN, min(ys) - MARGIN
        width, height = max(xs) + MARGIN - left, max(ys) + MARGIN - top
        return {
            "view": f"{left} {top} {width} {height}",
            "width": width,
            "height": height,
            "boxes": [_box(name, at) for name, at in zip(self.boxes, corners, strict=True)],
            "links": [_line(link, way) for link, way in zip(self.links, ways, strict=True)],
        }


def _corner(cell: Cell) -> Cell:
    return cell[0] * STEP_X, cell[1] * STEP_Y


def _box(name: str, at: RoutePoint) -> Mapping[str, Any]:
    lines = _lines(name)
    first = at.y + HIGH // 2 + 5 - 9 * (len(lines) - 1)
    words = [{"y": first + 18 * n, "words": line} for n, line in enumerate(lines)]
    return {"x": at.x, "y": at.y, "middle": at.x + WIDE // 2, "lines": words}


def _lines(name: str) -> list[str]:
    return wrap(name, NAME_LINE, break_long_words=False)


def _line(link: Link, way: Way) -> Mapping[str, Any]:
    """A line up to its arrow, and its label: over a level stretch, or on an upright one."""
    *others, before, last = way
    ahead = _step(before, last)
    neck = RoutePoint(last.x - ARROW * ahead.x, last.y - ARROW * ahead.y)
    stretches = list(pairwise((*others, before, neck)))
    start, end = max(stretches, key=lambda pair: abs(sum(pair[1]) - sum(pair[0])))
    upright = start.x == end.x
    middle = (start.y + end.y) // 2
    lane = SIGNALS.index(link.carries)
    return {
        "carries": link.carries,
        "label": link.label,
        "path": _path((*others, before, neck)),
        "arrow": _arrow(last, ahead),
        "upright": upright,
        "x": (start.x + end.x) // 2,
        "y": middle + (14 * lane - 14 if upright else -6),
    }


def _step(start: RoutePoint, end: RoutePoint) -> RoutePoint:
    """The direction of a stretch, as a step of 1."""
    return RoutePoint((end.x > start.x) - (end.x < start.x), (end.y > start.y) - (end.y < start.y))


def _path(way: Way) -> str:
    return "M" + "L".join(f"{x} {y}" for x, y in way)


def _arrow(tip: RoutePoint, ahead: RoutePoint) -> str:
    back = RoutePoint(tip.x - ARROW * ahead.x, tip.y - ARROW * ahead.y)
    wing = RoutePoint(6 * ahead.y, 6 * ahead.x)
    corners = (tip, (back.x + wing.x, back.y + wing.y), (back.x - wing.x, back.y - wing.y))
    return "M" + "L".join(f"{x} {y}" for x, y in corners) + "Z"


def read_signal_path(given: Given) -> SignalPath:
    given.only(*KEYS, "boxes", "links")
    boxes = dict(_boxes(given.table("boxes")))
    if len(boxes) < 2:
        raise given.problem("boxes", "A signal path has two boxes or more.")
    if len(set(boxes.values())) < len(boxes):
        raise given.problem("boxes", "Two boxes stand in the same place.")
    links = [_link(each, boxes) for each in given.tables("links")]
    if not links:
        raise given.problem("links", "There are no links between the boxes.")
    path = SignalPath(**common(given), boxes=boxes, links=tuple(links))
    for (one, table), (other, _) in combinations(zip(links, given.tables("links"), strict=True), 2):
        apart = one.source != other.source and one.target != other.target
        if apart and meet(path.way(one), path.way(other)):
            raise table.problem(
                "from",
                f"{begun(one.carries)} from “{one.source}” and from “{other.source}” would be "
                "one line; move a box.",
            )
    return path


def _boxes(given: Given) -> Iterator[tuple[str, tuple[int, int]]]:
    for name, place in given.values.items():
        lines = _lines(name)
        if not 1 <= len(lines) <= 2 or max(map(len, lines)) > NAME_LINE:
            raise given.problem(name, f"There is no room for “{name}” in a box.")
        match place:
            case [int(column), int(row)] if 1 <= column <= COLUMNS and 1 <= row <= ROWS:
                yield name, (column, row)
            case _:
                raise given.problem(
                    name, f"“{name}” is at [column, row], up to [{COLUMNS}, {ROWS}]."
                )


def _link(given: Given, boxes: Mapping[str, Cell]) -> Link:
    given.only("from", "to", "carries", "label")
    ends = [given.text(key) for key in ("from", "to")]
    for key, end in zip(("from", "to"), ends, strict=True):
        if end not in boxes:
            raise given.problem(key, f"There is no box “{end}”.")
    if ends[0] == ends[1]:
        raise given.problem("to", f"A link from “{ends[0]}” leads to another box.")
    carries = given.one_of("carries", SIGNALS)
    label = given.text("label", most=LABEL, default=carries)
    return Link(ends[0], ends[1], carries, label)
