"""Ways for lines between boxes on a grid, along the gutters between columns and rows.

Each kind of signal keeps to a lane of its own, in the gutters and at the sides of boxes, so
that lines of two kinds never lie on one another.
"""

from collections.abc import Set
from itertools import pairwise
from typing import NamedTuple

WIDE, HIGH = 120, 84  # of a box
ACROSS, DOWN = 84, 76  # of a gutter
STEP_X, STEP_Y = WIDE + ACROSS, HIGH + DOWN
# Off the middle of a box's side or a gutter, by the lane's number.
ASIDE = (-39, -13, 13, 39)
LEVEL = (-27, -9, 9, 27)

Cell = tuple[int, int]  # column, row; from 0


class RoutePoint(NamedTuple):
    x: int
    y: int


Way = tuple[RoutePoint, ...]


def way(start: Cell, end: Cell, lane: int, boxes: Set[Cell]) -> Way:
    """The corners of a line from one box to another, the first and the last on their sides."""
    across, down = end[0] - start[0], end[1] - start[1]
    right, below = (1 if across > 0 else -1), (1 if down > 0 else -1)
    if not down and not _between(start, end, boxes):
        return _side(start, right, lane), _side(end, -right, lane)
    if not across and not _between(start, end, boxes):
        return _top(start, below, lane), _top(end, -below, lane)
    if not down:
        return _by_row(start, end, lane, 1, 1)
    if not across:
        return _by_column(start, end, lane, 1, 1)
    if abs(across) == 1:
        return _by_column(start, end, lane, right, -right)
    if abs(down) == 1:
        return _by_row(start, end, lane, below, -below)
    first, last = _side(start, right, lane), _top(end, -below, lane)
    x, y = _gutter_x(start, right, lane), _gutter_y(end, -below, lane)
    return first, RoutePoint(x, first.y), RoutePoint(x, y), RoutePoint(last.x, y), last


def _by_row(start: Cell, end: Cell, lane: int, leaves: int, enters: int) -> Way:
    """Up or down, along the gutter beside the first box's row, and up or down again."""
    first, last, y = (
        _top(start, leaves, lane),
        _top(end, enters, lane),
        _gutter_y(start, leaves, lane),
    )
    return first, RoutePoint(first.x, y), RoutePoint(last.x, y), last


def _by_column(start: Cell, end: Cell, lane: int, leaves: int, enters: int) -> Way:
    """Left or right, along the gutter beside the first box's column, and left or right again."""
    first, last, x = (
        _side(start, leaves, lane),
        _side(end, enters, lane),
        _gutter_x(start, leaves, lane),
    )
    return first, RoutePoint(x, first.y), RoutePoint(x, last.y), last


def _between(start: Cell, end: Cell, boxes: Set[Cell]) -> bool:
    """Whether there is a box between two cells of one row or of one column."""
    (left, right), (top, bottom) = (sorted(pair) for pair in zip(start, end, strict=True))
    return any(
        left <= column <= right and top <= row <= bottom and (column, row) not in (start, end)
        for column, row in boxes
    )


def _side(cell: Cell, right: int, lane: int) -> RoutePoint:
    """On the right or, with −1, the left side of a box."""
    x = cell[0] * STEP_X + (WIDE if right > 0 else 0)
    return RoutePoint(x, cell[1] * STEP_Y + HIGH // 2 + LEVEL[lane])


def _top(cell: Cell, below: int, lane: int) -> RoutePoint:
    """On the lower or, with −1, the upper side of a box."""
    y = cell[1] * STEP_Y + (HIGH if below > 0 else 0)
    return RoutePoint(cell[0] * STEP_X + WIDE // 2 + ASIDE[lane], y)


def _gutter_x(cell: Cell, right: int, lane: int) -> int:
    edge = cell[0] * STEP_X + (WIDE if right > 0 else 0)
    return edge + right * ACROSS // 2 + LEVEL[lane]


def _gutter_y(cell: Cell, below: int, lane: int) -> int:
    edge = cell[1] * STEP_Y + (HIGH if below > 0 else 0)
    return edge + below * DOWN // 2 + LEVEL[lane]


def meet(one: Way, other: Way) -> bool:
    """Whether two lines lie on one another somewhere; to cross is not to meet."""
    return any(_overlap(a, b, c, d) for a, b in pairwise(one) for c, d in pairwise(other))


def _overlap(a: RoutePoint, b: RoutePoint, c: RoutePoint, d: RoutePoint) -> bool:
    for along, across in ((0, 1), (1, 0)):
        if a[across] == b[across] == c[across] == d[across]:
            (first, last), (begins, ends) = (
                sorted((a[along], b[along])),
                sorted((c[along], d[along])),
            )
            if first < ends and begins < last:
                return True
    return False
