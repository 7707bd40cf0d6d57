"""Black, laid so that there are pulses to run up on, or over what must not stay."""

from collections.abc import Iterator
from dataclasses import dataclass

from exercises.tape.edit import Assemble, Edit
from exercises.tape.planning.recordings import assemble, insert
from exercises.tape.planning.settling import source_start
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import Tape


@dataclass(frozen=True, slots=True)
class Blacks:
    """Recordings of black for a tape as it stands; none if the brief has no black.

    ``wider`` is where else they may begin and end.
    """

    target: Target
    tape: Tape
    stand: Stand
    wider: tuple[int, ...]

    def __iter__(self) -> Iterator[Edit]:
        """The shortest first."""
        yield from self._covers()
        ends = self._ends()
        ranges = [(end - start, start, end) for start in self._starts(ends) for end in ends]
        for frames, start, end in sorted(ranges):
            if frames > 0 and (laid := self._laid(start, end)):
                yield laid

    def _covers(self) -> Iterator[Edit]:
        """Inserts over what must not stay."""
        by_range: dict[tuple[int, int], set[str]] = {}
        for side, start, end in self.stand.extra:
            by_range.setdefault((start, end), set()).add(side)
        for (start, end), sides in by_range.items():
            strand = self._strand(start, end)
            if strand is not None:
                picture, sound = "picture" in sides, "sound" in sides
                yield insert(self.target, strand, start, end, picture=picture, sound=sound)

    def _ends(self) -> set[int]:
        """Where recordings of what is missing may want to begin."""
        ends = set(self.wider)
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
        strand = self._strand(start, end)
        return None if strand is None else assemble(self.target, strand, start, end)

    def _strand(self, start: int, end: int) -> Strand | None:
        """Black long enough to be laid there, settled from its first frame if it can be."""
        source = self.target.sources.get(self.target.brief.black)
        lock = self.target.bench.lock
        if source is None or end > self.tape.length:
            return None
        for run_up in (lock, 0):
            for take in source.takes:
                if take.end - take.start >= run_up + end - start:
                    return Strand(source.name, start - take.start - run_up)
        return None
