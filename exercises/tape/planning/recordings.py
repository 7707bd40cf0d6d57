"""The recordings that could be the next one of a plan."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from itertools import chain, product

from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.judging.brief import SIDES, Side
from exercises.tape.planning.adjusting import well_made
from exercises.tape.planning.settling import settled_start, settles, takes_between
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import Tape

Sides = tuple[Side, ...]


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
            for start, end, sides in self._ranges(strand):
                inserts = self._inserts(strand, start, end, sides)
                for edit in chain(inserts, self._assembles(strand, start, end)):
                    yield end - start, edit

    def _strands(self) -> list[Strand]:
        """Those that something is missing of, leftmost first; at the widest, all."""
        parts = self.target.parts
        missing = list(dict.fromkeys(parts[number].strand for number in sorted(self.stand.missing)))
        if self.wider and self.spare:
            missing += [strand for strand in self.target.strands if strand not in missing]
        return missing

    def _ranges(self, strand: Strand) -> Iterator[tuple[int, int, Sides]]:
        parts, missing = self.target.parts, self.stand.missing
        numbers = self.target.strands[strand]
        lacking = [number for number in numbers if number in missing]
        lacks = [lack for number in lacking for lack in missing[number]]
        if not self.spare:
            sides = {parts[number].side for number in lacking}
            start, end = min(first for first, _ in lacks), max(last for _, last in lacks)
            yield start, end, tuple(side for side in SIDES if side in sides)
            return
        seams = {
            seam
            for number in numbers
            for seam in self.target.seams
            if parts[number].start < seam < parts[number].end
        }
        starts = {parts[number].start for number in numbers} | {first for first, _ in lacks} | seams
        ends = {parts[number].end for number in numbers} | {last for _, last in lacks} | seams
        wanted = tuple(side for side in SIDES if side in {parts[n].side for n in numbers})
        for start, end in product(sorted(starts), sorted(ends)):
            useful = any(first < end and start < last for first, last in lacks)
            if start < end and (useful or self.wider):
                yield start, end, wanted

    def _inserts(self, strand: Strand, start: int, end: int, sides: Sides) -> Iterator[Insert]:
        if self.tape.control.at(end - 1) is None or self.tape.control.at(start) is None:
            return
        first = settled_start(self.target, self.tape, strand, start, assemble=False)
        if first is None or not fits(self.target, strand, first, end):
            return
        for picture, sound in _tracks(sides, each=self.spare > 0):
            yield insert(self.target, strand, first, end, picture=picture, sound=sound)

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


def _tracks(sides: Sides, *, each: bool) -> Iterator[tuple[bool, bool]]:
    """All the tracks at once, or also each for itself: picture, sound."""
    if each and len(sides) == 2:
        yield True, False
        yield False, True
    yield "picture" in sides, "sound" in sides


def fits(target: Target, strand: Strand, start: int, end: int) -> bool:
    """Whether master and source reach so far, with no blank tape on the source's way."""
    on_tape = 0 <= start < end <= target.before.length
    return on_tape and takes_between(target, strand, start, end - 1) is not None


def assemble(target: Target, strand: Strand, start: int, end: int) -> Assemble:
    source, shift = target.sources[strand.source], strand.shift
    making = well_made(target, source.take_at(end - 1 - shift))
    return Assemble(source, start - shift, end - shift, start, making=making)


def insert(
    target: Target, strand: Strand, start: int, end: int, *, picture: bool, sound: bool
) -> Insert:
    source, shift = target.sources[strand.source], strand.shift
    making = well_made(target, source.take_at(end - 1 - shift))
    return Insert(source, start - shift, end - shift, start, picture, sound, making=making)


def of_strand(edit: Edit) -> Strand:
    return Strand(edit.source.name, edit.at - edit.in_)


def sides_of(edit: Edit) -> Collection[Side]:
    if isinstance(edit, Insert):
        return [side for side in SIDES if (edit.picture if side == "picture" else edit.sound)]
    return SIDES
