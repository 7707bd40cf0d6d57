"""Painting one track: how few strokes, and how short ones, lay parts over one another.

A stroke is a recording as one track sees it: it covers a stretch with one strand, and a
later stroke may cover a part of it. Costs are whole numbers: STROKE for each stroke, and
1 for each frame. Fewer strokes are always cheaper, and costs can be added.
"""

from collections.abc import Collection, Sequence

from exercises.tape.planning.target import WantedPart
from exercises.tape.work import spend

STROKE = 1 << 40  # more than all the frames of any plan
PARTS = 16  # looked at in a step

Costs = Sequence[Sequence[int]]


def from_nothing(parts: Sequence[WantedPart]) -> Costs:
    """``costs[first][last]``: what it takes to lay these parts, whatever lies there before.

    The first of them is laid for itself, or by a longer stroke of a later one of its
    strand; what lies between is laid over that.
    """
    count = len(parts)
    costs = [[0] * (count + 1) for _ in range(count + 2)]
    for first in reversed(range(count)):
        for last in range(first, count):
            spend(1 + (last - first) // PARTS)
            own = STROKE + parts[first].end - parts[first].start
            best = costs[first + 1][last] + own
            for other in range(first + 1, last + 1):
                if parts[other].strand == parts[first].strand:
                    between = costs[first + 1][other - 1]
                    longer = parts[other].start - parts[first].start
                    best = min(best, between + costs[other][last] + longer)
            costs[first][last] = best
    return costs


def to_complete(numbers: Sequence[int], missing: Collection[int], costs: Costs) -> int:
    """What it takes to lay the missing ones of these parts; the others may be laid over."""
    spend(1 + len(numbers) * len(missing) // PARTS)
    reached = [0]
    for last, number in enumerate(numbers):
        if number in missing:
            reached.append(min(reached[first] + costs[first][last] for first in range(last + 1)))
        else:
            reached.append(reached[-1])
    return reached[-1]
