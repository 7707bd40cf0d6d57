"""The fewest strokes that solve a puzzle, found from the last one back to the first.

Of the last stroke all must be right. What it covers no longer matters to the strokes
before it, so that the more it covers the better. Frames are not counted, but no stroke
reaches further than what is left of its strand.
"""

from collections.abc import Iterator
from heapq import heappop, heappush
from typing import NamedTuple

from exercises.tape.planning.cells import BLACK, Board, Sides
from exercises.tape.planning.crossings import Masks, crossings, fewest
from exercises.tape.planning.puzzle import CHOICES, Chosen, Solution, Stroke
from exercises.tape.planning.strokes import STROKE
from exercises.tape.planning.target import Strand
from exercises.tape.work import spend

PATIENCE = 6_000  # states looked at before it is given up


class Rest(NamedTuple):
    """The cells of each track that earlier strokes must leave right, and a black for nothing."""

    picture: int
    sound: int
    gift: bool


class Peeling:
    def __init__(self, board: Board, *, gift: bool) -> None:
        self.board = board
        self.first = Rest(*board.all, gift)
        self._strands = [strand for strand in board.strands if strand != BLACK]

    def solve(self) -> Solution | None:
        """None if it takes too long, or no strokes do it."""
        costs = {self.first: 0}
        ways: dict[Rest, tuple[Rest, Stroke]] = {}
        pending = [(0, 0, 0, self.first)]
        looked_at = 0
        while pending and looked_at < PATIENCE:
            *_, rest = heappop(pending)
            spend(len(self._strands))
            wrong = self._wrong(rest)
            if not wrong:
                return _told(rest, self.first, costs[rest], ways)
            for stroke, cost, before in self._last(rest, wrong):
                total = costs[rest] + cost
                if total < costs.get(before, total + 1):
                    looked_at += 1
                    costs[before], ways[before] = total, (rest, stroke)
                    few = total // STROKE + self._least(before)
                    heappush(pending, (few, -(total // STROKE), looked_at, before))
        return None

    def _wrong(self, rest: Rest) -> dict[Strand, Masks]:
        """What is still to be laid, for each strand."""
        wrong = {}
        for strand in self._strands:
            picture, sound = self.board.own[strand]
            held = self.board.held
            masks = picture & rest.picture & ~held[0], sound & rest.sound & ~held[1]
            if masks[0] or masks[1]:
                wrong[strand] = masks
        return wrong

    def _least(self, rest: Rest) -> int:
        wrong = self._wrong(rest)
        needed = rest.picture, rest.sound
        return len(wrong) + fewest(crossings(self.board, wrong, needed, gift=rest.gift))

    def _last(self, rest: Rest, wrong: dict[Strand, Masks]) -> Iterator[tuple[Stroke, int, Rest]]:
        """Strokes that could be the last of those that are left, as long as can be."""
        for strand in self.board.strands:
            own = self._black(rest) if strand == BLACK else wrong.get(strand, (0, 0))
            good = self.board.good[strand]
            spoilt = rest.picture & ~good[0], rest.sound & ~good[1]
            for sides, chosen in CHOICES:
                mine = own[0] if chosen[0] else 0, own[1] if chosen[1] else 0
                if all(mine[n] for n in (0, 1) if chosen[n]):
                    blocked = self._blocked(spoilt, chosen)
                    yield from self._runs(rest, strand, sides, chosen, mine, blocked)

    def _black(self, rest: Rest) -> Masks:
        """Where black could be laid over what was laid where nothing is wanted."""
        picture, sound = self.board.own.get(BLACK, (0, 0))
        return picture & rest.picture, sound & rest.sound

    def _runs(
        self, rest: Rest, strand: Strand, sides: Sides, chosen: Chosen, mine: Masks, blocked: int
    ) -> Iterator[tuple[Stroke, int, Rest]]:
        board = self.board
        for first, last in _stretches(mine[0] | mine[1], blocked):
            cells = board.cells(first, last)
            start, early = board.start(strand, first)
            serves = all(cells & mine[n] for n in (0, 1) if chosen[n])
            if start is None or not serves or early & (blocked | mine[0] | mine[1]):
                continue
            end = board.cuts[last + 1]
            if board.may(strand, start, end, cells | early, sides):
                given = strand == BLACK and rest.gift
                cost = 0 if given else STROKE + board.frames(strand, start, end)
                before = Rest(
                    rest.picture & ~cells if chosen[0] else rest.picture,
                    rest.sound & ~cells if chosen[1] else rest.sound,
                    rest.gift and not given,
                )
                yield Stroke(strand, start, end, sides, board.cuts[first]), cost, before

    def _blocked(self, spoilt: Masks, chosen: Chosen) -> int:
        """Cells that it must not cover."""
        kept = self.board.kept
        picture = spoilt[0] | kept["picture"] if chosen[0] else 0
        sound = spoilt[1] | kept["sound"] if chosen[1] else 0
        return picture | sound


def _stretches(mine: int, blocked: int) -> Iterator[tuple[int, int]]:
    """The first and the last of the cells between any two that are blocked."""
    held: list[int] = []
    for cell in range((mine | blocked).bit_length()):
        if blocked >> cell & 1:
            if held:
                yield held[0], held[-1]
            held = []
        elif mine >> cell & 1:
            held.append(cell)
    if held:
        yield held[0], held[-1]


def _told(rest: Rest, first: Rest, cost: int, ways: dict[Rest, tuple[Rest, Stroke]]) -> Solution:
    """What was peeled off last is laid first."""
    strokes: list[Stroke] = []
    while rest != first:
        rest, stroke = ways[rest]
        strokes.append(stroke)
    return Solution(tuple(strokes), cost)
