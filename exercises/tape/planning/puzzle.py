"""A section of a brief as a puzzle of strokes: which strand to lay over which.

On a tape with pulses all along, nothing counts but what lies over what. The puzzle is cut
into cells, and a state is which cells of each track hold what they should: a bit a cell.
What it takes to solve the puzzle is what any tape takes at the least.
"""

from collections.abc import Iterator
from heapq import heappop, heappush
from itertools import pairwise
from typing import NamedTuple

from exercises.tape.planning.cells import BLACK, Board, Sides
from exercises.tape.planning.crossings import Masks, crossings, fewest
from exercises.tape.planning.strokes import STROKE, from_nothing, to_complete
from exercises.tape.planning.target import Strand, WantedPart
from exercises.tape.tape import SIDES, Side
from exercises.tape.work import spend

Chosen = tuple[bool, bool]  # whether picture, and whether sound
CHOICES: tuple[tuple[Sides, Chosen], ...] = (
    (("picture",), (True, False)),
    (("sound",), (False, True)),
    (SIDES, (True, True)),
)
PATIENCE = 2_500  # states looked at before a puzzle is given up
TANGLED = 4  # strokes more than strands from which on it is given up sooner
HASTE = 250


class PuzzleState(NamedTuple):
    """The cells of each track that are right, and whether a black is still for nothing."""

    picture: int
    sound: int
    gift: bool


class Stroke(NamedTuple):
    """A recording as a puzzle sees it; from ``settled`` on it must be steady."""

    strand: Strand
    start: int
    end: int
    sides: Sides
    settled: int


class Solution(NamedTuple):
    """Strokes in an order that solves the puzzle, at the lowest cost that there is."""

    strokes: tuple[Stroke, ...]
    cost: int


class Puzzle:
    """``gift`` if one recording of black costs nothing here: it is made in any case."""

    def __init__(self, board: Board, *, gift: bool) -> None:
        self.board = board
        self.first = PuzzleState(board.held[0], board.held[1], gift)
        self._strands = [strand for strand in board.strands if strand != BLACK]
        self._least: dict[PuzzleState, int] = {}
        self._tracks = [PuzzleTrack(board, side) for side in SIDES]

    def solve(self) -> Solution | None:
        """The cheapest strokes; None if it takes too long to find them, or there are none."""
        costs = {self.first: 0}
        ways: dict[PuzzleState, tuple[PuzzleState, Stroke]] = {}
        pending = [(0, 0, 0, self.first)]
        looked_at, tangle = 0, self._crossed(self._wrong(self.first), gift=False)
        patience = HASTE if tangle >= TANGLED else PATIENCE
        while pending and looked_at < patience:
            *_, state = heappop(pending)
            spend(len(self._strands))
            if state[:2] == self.board.all:
                return _told(self.first, state, costs[state], ways)
            for stroke, cost, after in self._next(state):
                total = costs[state] + cost
                if total < costs.get(after, total + 1):
                    looked_at += 1
                    costs[after], ways[after] = total, (state, stroke)
                    heappush(pending, (total + self.least(after), -total, looked_at, after))
        return None

    def least(self, state: PuzzleState) -> int:
        """A cost that no way from the state to the solution undercuts."""
        if state not in self._least:
            wrong = self._wrong(state)
            tracks = self._by_track(state, wrong)
            self._least[state] = max(self._by_strand(wrong, gift=state.gift), *tracks)
        return self._least[state]

    def _wrong(self, state: PuzzleState) -> dict[Strand, Masks]:
        """The cells that are wrong, for each strand that they belong to."""
        wrong = {}
        for strand in self._strands:
            picture, sound = self.board.own[strand]
            masks = picture & ~state.picture, sound & ~state.sound
            if masks[0] or masks[1]:
                wrong[strand] = masks
        return wrong

    def _by_strand(self, wrong: dict[Strand, Masks], *, gift: bool) -> int:
        """One stroke for each strand, from the first cell of it that is wrong to the last.

        Where strands cross, there are more; each of those can leave out one gap at most.
        """
        more = self._crossed(wrong, gift=gift)
        spans = [list(self._spans(picture | sound)) for picture, sound in wrong.values()]
        hulls = sum(cells[-1][1] - cells[0][0] for cells in spans)
        gaps = [start - end for cells in spans for (_, end), (start, _) in pairwise(cells)]
        saved = sum(sorted(gaps, reverse=True)[:more]) if more else 0
        return STROKE * (len(wrong) + more) + hulls - saved

    def _crossed(self, wrong: dict[Strand, Masks], *, gift: bool) -> int:
        """How many strokes more than one a strand it takes, since strands cross."""
        return fewest(crossings(self.board, wrong, self.board.all, gift=gift))

    def _spans(self, cells: int) -> Iterator[tuple[int, int]]:
        """The frames of cells, one stretch after the other."""
        cuts = self.board.cuts
        while cells:
            first = (cells & -cells).bit_length() - 1
            run = (cells >> first) + 1  # carries as far as the cells are neighbours
            last = first + (run & -run).bit_length() - 1
            yield cuts[first], cuts[last]
            cells &= -1 << last

    def _by_track(self, state: PuzzleState, wrong: dict[Strand, Masks]) -> Iterator[int]:
        """The strokes of one track, and one for each strand that has nothing on it."""
        for track, held in zip(self._tracks, state[:2], strict=True):
            others = (masks for strand, masks in wrong.items() if strand not in track.strands)
            yield track.least(held, black=not state.gift) + sum(
                STROKE + self.board.length(picture | sound) for picture, sound in others
            )

    def _next(self, state: PuzzleState) -> Iterator[tuple[Stroke, int, PuzzleState]]:
        """What could be laid next, what it costs, and what comes of it.

        It begins and ends with a cell that it puts right, and serves each of its tracks.
        """
        for strand in self.board.strands:
            good = self.board.good[strand]
            new = tuple(right & ~held for right, held in zip(good, state[:2], strict=True))
            for sides, chosen in CHOICES:
                if all(cells for cells, is_on in zip(new, chosen, strict=True) if is_on):
                    yield from self._laid(state, strand, sides, chosen, new)

    def _laid(
        self,
        state: PuzzleState,
        strand: Strand,
        sides: Sides,
        chosen: Chosen,
        new: tuple[int, ...],
    ) -> Iterator[tuple[Stroke, int, PuzzleState]]:
        board = self.board
        wrong = (new[0] if chosen[0] else 0) | (new[1] if chosen[1] else 0)
        edges = [cell for cell in range(board.count) if wrong >> cell & 1]
        given = strand == BLACK and state.gift
        for number, first in enumerate(edges):
            start, early = board.start(strand, first)
            for last in edges[number:] if start is not None else ():
                end, cells = board.cuts[last + 1], early | board.cells(first, last)
                serves = all(cells & new[n] for n in (0, 1) if chosen[n])
                if serves and start is not None and board.may(strand, start, end, cells, sides):
                    cost = 0 if given else STROKE + board.frames(strand, start, end)
                    picture, sound = (
                        (held & ~cells) | (cells & board.good[strand][n]) if chosen[n] else held
                        for n, held in enumerate(state[:2])
                    )
                    after = PuzzleState(picture, sound, state.gift and not given)
                    yield Stroke(strand, start, end, sides, board.cuts[first]), cost, after


class PuzzleTrack:
    """One track of a board: strokes that it takes for itself, from any cells that are right."""

    def __init__(self, board: Board, side: Side) -> None:
        self._known: dict[tuple[int, bool], int] = {}
        cells = board.wanted[side]
        self.strands = {strand for strand in cells if strand not in (None, BLACK)}
        self._numbers = {
            black: [n for n, strand in enumerate(cells) if strand and (black or strand != BLACK)]
            for black in (False, True)
        }
        self._costs = {
            black: from_nothing(
                [
                    WantedPart(board.cuts[n], board.cuts[n + 1], side, cells[n] or BLACK)
                    for n in numbers
                ]
            )
            for black, numbers in self._numbers.items()
        }

    def least(self, held: int, *, black: bool) -> int:
        """``black`` if laying black costs as any stroke does; else it is left out."""
        if (held, black) not in self._known:
            numbers = self._numbers[black]
            missing = {number for number in numbers if not held >> number & 1}
            self._known[held, black] = to_complete(numbers, missing, self._costs[black])
        return self._known[held, black]


def _told(
    first: PuzzleState,
    last: PuzzleState,
    cost: int,
    ways: dict[PuzzleState, tuple[PuzzleState, Stroke]],
) -> Solution:
    strokes: list[Stroke] = []
    while last != first:
        last, stroke = ways[last]
        strokes.append(stroke)
    return Solution(tuple(reversed(strokes)), cost)
