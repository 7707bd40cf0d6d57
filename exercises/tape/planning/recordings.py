"""The recordings that could be the next one of a plan."""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from itertools import chain, combinations, product

from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.planning.adjusting import well_made
from exercises.tape.planning.settling import settled_start, settles, takes_between
from exercises.tape.planning.stand import Stand, lays
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.work import spend

Sides = tuple[Side, ...]
SUBSETS: tuple[Sides, ...] = (("picture",), ("sound",), SIDES)


@dataclass(frozen=True, slots=True)
class Choices:
    """Recordings of what is wanted, for a tape as it stands.

    spare  how many more recordings than one for each strand that is missing; with none,
           each recording must complete its strand
    wider  where else an assemble may begin and end, further out than its strand is wanted;
           black may lie there in any case
    """

    target: Target
    tape: Tape
    stand: Stand
    spare: int
    wider: tuple[int, ...]
    cuts: tuple[int, ...]

    def __iter__(self) -> Iterator[tuple[int, Edit]]:
        """Each with the number of frames that it is meant for."""
        for strand in self._strands():
            for start, end, subsets in self._ranges(strand):
                inserts = self._inserts(strand, start, end, subsets)
                for edit in chain(inserts, self._assembles(strand, start, end)):
                    yield end - start, edit

    def _strands(self) -> list[Strand]:
        """Those that something is missing of, leftmost first; at the widest, all."""
        parts = self.target.parts
        missing = list(dict.fromkeys(parts[number].strand for number in sorted(self.stand.missing)))
        if self.wider and self.spare:
            missing += [strand for strand in self.target.strands if strand not in missing]
        return missing

    def _ranges(self, strand: Strand) -> Iterator[tuple[int, int, tuple[Sides, ...]]]:
        """What could be laid in one go, and on which tracks by an insert.

        Frames that are there already are not recorded again at either end.
        """
        parts, missing = self.target.parts, self.stand.missing
        numbers = self.target.strands[strand]
        lacking = [number for number in numbers if number in missing]
        if not self.spare:
            sides = {parts[number].side for number in lacking}
            start = min(missing[number][0][0] for number in lacking)
            end = max(missing[number][-1][1] for number in lacking)
            yield start, end, (tuple(side for side in SIDES if side in sides),)
            return
        for start, end in combinations(sorted(self._edges(numbers)), 2):
            spend(1 + len(lacking) // 4)
            at_start, at_end = self._lacking_at(lacking, start), self._lacking_at(lacking, end - 1)
            subsets = tuple(
                subset
                for subset in SUBSETS
                if at_start.intersection(subset)
                and at_end.intersection(subset)
                and self._lacking_in(lacking, start, end).issuperset(subset)
            )
            if self.wider or (at_start and at_end):
                yield start, end, subsets

    def _edges(self, numbers: Sequence[int]) -> set[int]:
        """Where the parts, or what is missing of them, begin and end; and their seams."""
        parts, missing = self.target.parts, self.stand.missing
        edges = {edge for number in numbers for edge in parts[number][:2]}
        edges |= {edge for number in numbers for lack in missing.get(number, ()) for edge in lack}
        return edges | {
            seam
            for seam in self.target.seams
            if any(parts[number].start < seam < parts[number].end for number in numbers)
        }

    def _lacking_at(self, numbers: Sequence[int], frame: int) -> frozenset[Side]:
        return self._lacking_in(numbers, frame, frame + 1)

    def _lacking_in(self, numbers: Sequence[int], start: int, end: int) -> frozenset[Side]:
        """On which tracks something of these parts is missing in a range."""
        return frozenset(
            self.target.parts[number].side
            for number in numbers
            if any(first < end and start < last for first, last in self.stand.missing[number])
        )

    def _inserts(
        self, strand: Strand, start: int, end: int, subsets: Sequence[Sides]
    ) -> Iterator[Insert]:
        if not subsets or self.tape.control.at(end - 1) is None:
            return
        first = settled_start(self.target, self.tape, strand, start, assemble=False)
        if first is None or not fits(self.target, strand, first, end):
            return
        for sides in subsets:
            yield insert(self.target, strand, first, end, sides)

    def _assembles(self, strand: Strand, start: int, end: int) -> Iterator[Assemble]:
        first = settled_start(self.target, self.tape, strand, start, assemble=True)
        if first is None:
            return
        starts, ends = [first], [end]
        further = self.cuts if strand.source == self.target.brief.black else self.wider
        starts += [
            cut
            for cut in further
            if cut < first and settles(self.target, self.tape, strand, cut, start, assemble=True)
        ]
        ends += [cut for cut in further if cut > end]
        for begin, finish in product(starts, ends):
            if fits(self.target, strand, begin, finish):
                yield assemble(self.target, strand, begin, finish)


def fits(target: Target, strand: Strand, start: int, end: int) -> bool:
    """Whether master and source reach so far, with no blank tape on the source's way."""
    on_tape = 0 <= start < end <= target.before.length
    return on_tape and takes_between(target, strand, start, end - 1) is not None


def assemble(
    target: Target, strand: Strand, start: int, end: int, sides: Collection[Side] = SIDES
) -> Assemble:
    """Whichever tracks are wanted, an assemble records them all."""
    source, shift = target.sources[strand.source], strand.shift
    machines = well_made(target, source.take_at(end - 1 - shift))
    return Assemble(source, start - shift, end - shift, start, machines=machines)


def insert(target: Target, strand: Strand, start: int, end: int, sides: Collection[Side]) -> Insert:
    source, shift = target.sources[strand.source], strand.shift
    machines = well_made(target, source.take_at(end - 1 - shift))
    picture, sound = "picture" in sides, "sound" in sides
    return Insert(source, start - shift, end - shift, start, picture, sound, machines=machines)


def of_strand(edit: Edit) -> Strand:
    return Strand(edit.source.name, edit.at - edit.in_)


def sides_of(edit: Edit) -> Sides:
    return tuple(side for side in SIDES if lays(edit, side))
