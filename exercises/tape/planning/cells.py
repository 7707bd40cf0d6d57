"""A section of a target, cut into cells, with a bit for each of them."""

from exercises.tape.judging.ranges import overlapping
from exercises.tape.planning.settling import source_start, takes_between
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import SIDES, Side

BLACK = Strand("", 0)  # black, at any offset

Sides = tuple[Side, ...]


class Board:
    """Cell n is ``[cuts[n], cuts[n + 1])`` of both tracks, and bit n of a mask.

    wanted  per track and cell: the strand that belongs there; BLACK where nothing new may
            lie but that; None where anything may
    own     per strand, of picture and sound: where it is wanted
    good    per strand, of picture and sound: where it would be right
    held    of picture and sound: what is right already
    kept    per track: what has to stay
    """

    def __init__(self, target: Target, stand: Stand, start: int, end: int) -> None:
        self.target, self.stand = target, stand
        self.cuts = _cuts(target, stand, start, end)
        self.count = len(self.cuts) - 1
        self.all = (1 << self.count) - 1, (1 << self.count) - 1
        self.wanted = {
            side: [self._wanted(side, cell) for cell in self.cuts[:-1]] for side in SIDES
        }
        named = {strand for cells in self.wanted.values() for strand in cells if strand}
        self.strands = sorted(named)
        self.own = {
            strand: (self._own("picture", strand), self._own("sound", strand)) for strand in named
        }
        self.good = {strand: tuple(self._good(side, strand) for side in SIDES) for strand in named}
        self.held = self._held("picture"), self._held("sound")
        self.kept = {side: self._mask_of(side) for side in SIDES}
        self._starts: dict[tuple[Strand, int], tuple[int | None, int]] = {}

    def cells(self, first: int, last: int) -> int:
        """The mask of these cells."""
        return (1 << last + 1) - (1 << first)

    def length(self, cells: int) -> int:
        return sum(self.cuts[n + 1] - self.cuts[n] for n in range(self.count) if cells >> n & 1)

    def start(self, strand: Strand, cell: int) -> tuple[int | None, int]:
        """Where a recording must begin for this cell to be settled, and over which cells."""
        key = strand, cell
        if key not in self._starts:
            at = self.cuts[cell]
            start = at if strand == BLACK else source_start(self.target, strand, at)
            over = (n for n in range(cell) if start is not None and self.cuts[n + 1] > start)
            self._starts[key] = start, sum(1 << n for n in over)
        return self._starts[key]

    def may(self, strand: Strand, start: int, end: int, cells: int, sides: Sides) -> bool:
        """Whether such a recording spoils nothing that has to stay, and has the source for it."""
        if any(self.kept[side] & cells for side in sides):
            return False
        return strand == BLACK or takes_between(self.target, strand, start, end - 1) is not None

    def frames(self, strand: Strand, start: int, end: int) -> int:
        """How many frames it records at the least: some of its black a wipe may spare it."""
        if strand != BLACK:
            return end - start
        stretches = sum(len(list(overlapping(self.target.free[s], start, end))) for s in SIDES)
        return max(1, end - start - stretches * self.target.bench.erase_gap)

    def _wanted(self, side: Side, frame: int) -> Strand | None:
        for number in self.target.sides[side]:
            part = self.target.parts[number]
            if part.start <= frame < part.end:
                return part.strand
        rolls = self.target.bench.relock > 0  # else a wipe may take away what is laid there
        return (
            BLACK if rolls and any(overlapping(self.target.free[side], frame, frame + 1)) else None
        )

    def _good(self, side: Side, strand: Strand) -> int:
        right = {None, strand}
        if strand.source == self.target.brief.black:
            right.add(BLACK)
        return sum(1 << n for n, wanted in enumerate(self.wanted[side]) if wanted in right)

    def _own(self, side: Side, strand: Strand) -> int:
        return sum(1 << n for n, wanted in enumerate(self.wanted[side]) if wanted == strand)

    def _held(self, side: Side) -> int:
        lacks = [
            lack
            for number in self.target.sides[side]
            for lack in self.stand.missing.get(number, ())
        ]
        lacks += [(start, end) for each, start, end in self.stand.extra if each == side]
        wrong = sum(
            1 << n
            for n, cell in enumerate(self.cuts[:-1])
            if any(start <= cell < end for start, end in lacks)
        )
        return self.all[0] & ~wrong

    def _mask_of(self, side: Side) -> int:
        kept = [kept for kept in self.target.brief.kept if kept.track == side]
        return sum(
            1 << n
            for n, cell in enumerate(self.cuts[:-1])
            if any(each.start <= cell < each.end for each in kept)
        )


def _cuts(target: Target, stand: Stand, start: int, end: int) -> list[int]:
    cuts = {start, end}
    for number, part in enumerate(target.parts):
        cuts.update(part[:2])
        cuts.update(edge for lack in stand.missing.get(number, ()) for edge in lack)
        early = source_start(target, part.strand, part.start)
        cuts.update(() if early is None else (early,))
    for side in SIDES:
        cuts.update(edge for each in target.free[side] for edge in each)
    cuts.update(edge for kept in target.brief.kept for edge in (kept.start, kept.end))
    cuts.update(edge for _, *extra in stand.extra for edge in extra)
    return sorted(cut for cut in cuts if start <= cut <= end)
