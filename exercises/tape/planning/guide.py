"""The way through a brief when its machines have all the run-up that they need.

A brief falls into sections that no strand reaches across. Each is solved as a puzzle of
strokes; together they tell what any plan takes at the least, and often how it goes.
"""

from collections.abc import Iterable, Iterator, Sequence

from exercises.tape.edit import Assemble, Edit
from exercises.tape.judging.ranges import merged, overlapping
from exercises.tape.planning.blacks import black_strand
from exercises.tape.planning.bounds import Bounds
from exercises.tape.planning.cells import BLACK, Board
from exercises.tape.planning.peeling import Peeling
from exercises.tape.planning.puzzle import Puzzle, Stroke
from exercises.tape.planning.recordings import assemble, fits, insert, of_strand, sides_of
from exercises.tape.planning.settling import settles
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.strokes import STROKE
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import SIDES, Tape
from exercises.tape.work import spend

Ranges = Sequence[tuple[int, int]]


class Guide:
    """No plan has fewer ``recordings``, and none of so many has fewer ``frames``.

    ways  orders of strokes that may lead there, by how many recordings they take
    """

    def __init__(self, target: Target, bounds: Bounds, stand: Stand) -> None:
        needs = bounds.needs(stand, target.before)
        black = merged(bounds.black_ranges(stand, target.before)) if needs.black else []
        sections = _sections(target)
        boards = [Board(target, stand, start, end) for start, end in sections]
        is_open = any(_is_open(target, start, end) for start, end in sections)
        self.ways: dict[int, StrokeOrder] = {}
        cost = self._solve(target, boards, black=needs.black, gift=False)
        if needs.black and is_open:  # the black that is laid in any case may serve there, too
            cost = self._solve(target, boards, black=needs.black, gift=True)
        self.recordings = needs.black + cost // STROKE
        self.frames = cost % STROKE
        if black:
            self.frames += _length(black) if is_open else black[-1][1] - black[0][0]

    def _solve(self, target: Target, boards: list[Board], *, black: int, gift: bool) -> int:
        """The least cost of all sections together, and the way there, if it was found."""
        puzzles = [Puzzle(board, gift=gift) for board in boards]
        solutions = [puzzle.solve() for puzzle in puzzles]
        least = sum(
            solution.cost if solution else puzzle.least(puzzle.first)
            for puzzle, solution in zip(puzzles, solutions, strict=True)
        )
        found = [
            solution or Peeling(board, gift=gift).solve()
            for board, solution in zip(boards, solutions, strict=True)
        ]
        ways = [solution for solution in found if solution]
        if len(ways) == len(puzzles):
            cost = sum(solution.cost for solution in ways)
            strokes = tuple(stroke for solution in ways for stroke in solution.strokes)
            self.ways[black + cost // STROKE] = StrokeOrder(target, strokes)
        return least


class StrokeOrder:
    """Strokes in an order in which they could be recorded; how many frames they take."""

    def __init__(self, target: Target, strokes: Sequence[Stroke]) -> None:
        self.target, self.strokes = target, strokes
        self.frames = sum(stroke.end - stroke.start for stroke in strokes)

    def edits(self, tape: Tape, made: Iterable[Edit]) -> Iterator[Edit]:
        """The strokes that can be recorded next, leftmost first, as inserts and assembles."""
        pending = self._pending(made)
        spend(len(pending) ** 2 // 64)
        for number, stroke in sorted(enumerate(pending), key=_place):
            if not any(_meet(earlier, stroke) for earlier in pending[:number]):
                yield from self._recordings(tape, stroke)

    def left(self, made: Iterable[Edit], black: int) -> int:
        """How many recordings are left, of which so many at the least of black."""
        pending = self._pending(made)
        blacks = sum(stroke.strand == BLACK for stroke in pending)
        return len(pending) - blacks + max(black, blacks)

    def _pending(self, made: Iterable[Edit]) -> list[Stroke]:
        pending = list(self.strokes)
        for edit in made:
            spend(1 + len(pending) // 32)
            done = next((stroke for stroke in pending if self._is_made(stroke, edit)), None)
            if done:
                pending.remove(done)
        return pending

    def _recordings(self, tape: Tape, stroke: Stroke) -> Iterator[Edit]:
        strand = self._strand(stroke)
        if strand is None or not fits(self.target, strand, stroke.start, stroke.end):
            return
        for make, is_assemble in ((insert, False), (assemble, True)):
            ready = stroke.strand == BLACK or settles(
                self.target, tape, strand, stroke.start, stroke.settled, assemble=is_assemble
            )
            if ready:
                yield make(self.target, strand, stroke.start, stroke.end, stroke.sides)

    def _strand(self, stroke: Stroke) -> Strand | None:
        if stroke.strand != BLACK:
            return stroke.strand
        return black_strand(self.target, stroke.start, stroke.end)

    def _is_made(self, stroke: Stroke, edit: Edit) -> bool:
        where = (edit.at, edit.end) == (stroke.start, stroke.end)
        whole = isinstance(edit, Assemble) or sides_of(edit) == stroke.sides
        return where and whole and of_strand(edit) == self._strand(stroke)


def _place(numbered: tuple[int, Stroke]) -> tuple[int, bool]:
    """From left to right, picture before sound: the order in which a search goes on."""
    _, stroke = numbered
    return stroke.start, "picture" not in stroke.sides


def _meet(one: Stroke, other: Stroke) -> bool:
    """Whether it matters which of them is laid first."""
    return one.start < other.end and other.start < one.end and bool({*one.sides} & {*other.sides})


def _sections(target: Target) -> list[tuple[int, int]]:
    reaches = (
        (target.parts[numbers[0]].start, max(target.parts[number].end for number in numbers))
        for numbers in target.strands.values()
    )
    sections: list[tuple[int, int]] = []
    for start, end in sorted(reaches):
        if sections and start < sections[-1][1]:
            sections[-1] = sections[-1][0], max(sections[-1][1], end)
        else:
            sections.append((start, end))
    return sections


def _is_open(target: Target, start: int, end: int) -> bool:
    """Whether a track is free anywhere in a section."""
    return any(any(overlapping(target.free[side], start, end)) for side in SIDES)


def _length(ranges: Ranges) -> int:
    return sum(end - start for start, end in ranges)
