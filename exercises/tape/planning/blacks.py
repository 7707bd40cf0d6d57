"""Black, laid so that there are pulses to run up on, or over what must not stay."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product

from exercises.tape.edit import Assemble, Edit
from exercises.tape.planning.recordings import assemble, insert
from exercises.tape.planning.settling import source_start
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import Tape
from exercises.tape.work import spend


@dataclass(frozen=True, slots=True)
class Blacks:
    """Recordings of black for a tape as it stands; none if the brief has no black.

    needed  what black has to be laid over
    wider   where else they may begin and end
    """

    target: Target
    tape: Tape
    stand: Stand
    needed: Sequence[tuple[int, int]]
    wider: tuple[int, ...]

    def __iter__(self) -> Iterator[Edit]:
        """The shortest first."""
        yield from self._covers()
        ends = self._ends()
        starts = self._starts(ends)
        spend(len(starts) * len(ends) // 16)
        ranges = [(end - start, start, end) for start in starts for end in ends]
        for frames, start, end in sorted(ranges):
            if frames > 0 and (laid := self._laid(start, end)):
                yield laid

    def _covers(self) -> Iterator[Edit]:
        """Inserts over what must not stay, or over several such places at once."""
        extra = self.stand.extra
        starts, ends = {start for _, start, _ in extra}, {end for _, _, end in extra}
        spend(len(starts) * len(ends) * len(extra) // 16)
        for start, end in sorted(product(starts, ends), key=lambda ends: ends[1] - ends[0]):
            sides = {side for side, first, last in extra if start <= first and last <= end}
            strand = black_strand(self.target, start, end) if sides else None
            if strand is not None:
                yield insert(self.target, strand, start, end, sides)

    def _ends(self) -> set[int]:
        """Where recordings of what is missing may want to begin."""
        ends = {*self.wider, *(end for _, end in self.needed)}
        for number, lacks in self.stand.missing.items():
            strand = self.target.parts[number].strand
            for start, _ in lacks:
                earliest = source_start(self.target, strand, start)
                ends.update({start} if earliest is None else {start, earliest})
        return ends

    def _starts(self, ends: set[int]) -> set[int]:
        """As early as the run-up asks for, or where pulses end and can run on."""
        run_up = max(self.target.bench.lock, self.target.bench.relock)
        starts = {end - run_up for end in ends if end >= run_up}
        starts |= {run.end for run in self.tape.control.laid}
        return starts.union(self.wider)

    def _laid(self, start: int, end: int) -> Assemble | None:
        strand = black_strand(self.target, start, end)
        return None if strand is None else assemble(self.target, strand, start, end)


def black_strand(target: Target, start: int, end: int) -> Strand | None:
    """Black long enough to be laid there, settled from its first frame if it can be."""
    source = target.sources.get(target.brief.black)
    if source is None or end > target.before.length:
        return None
    for run_up in (target.bench.lock, 0):
        for take in source.takes:
            if take.end - take.start >= run_up + end - start:
                return Strand(source.name, start - take.start - run_up)
    return None
