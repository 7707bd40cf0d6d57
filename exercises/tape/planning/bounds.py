"""What a tape needs at the least, whatever the recordings: bounds that are never too high."""

from collections.abc import Iterable, Iterator, Sequence
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from exercises.tape.judging.ranges import merged, overlapping
from exercises.tape.judging.stretches import stretches
from exercises.tape.planning.settling import source_start
from exercises.tape.planning.stand import Stand
from exercises.tape.planning.strokes import STROKE, Costs, from_nothing, to_complete
from exercises.tape.planning.target import Strand, Target
from exercises.tape.tape import SIDES, Side, Tape

LONGEST = 40  # parts of one track for which the strokes are counted

Ranges = Sequence[tuple[int, int]]
Missing = dict[Strand, list[tuple[int, int]]]


class PartGroup(NamedTuple):
    """Parts of one track, by number, with nothing between them that has to stay."""

    numbers: tuple[int, ...]
    costs: Costs


class Needs(NamedTuple):
    """Recordings that a tape still needs at the least.

    strands  one for each strand of which something is missing
    strokes  of each track: the strokes that it needs, and one for each missing strand
             that has no part on it
    black    1 if no plan gets by without a recording of black, that nobody wants to see
    """

    strands: int
    strokes: tuple[int, ...]
    black: int

    @property
    def recordings(self) -> int:
        return max(self.strands, *self.strokes) + self.black


class Bounds:
    """Fewest recordings and fewest recorded frames from a tape to its target."""

    def __init__(self, target: Target) -> None:
        self.target = target

    def needs(self, stand: Stand, tape: Tape) -> Needs:
        strands = self._strands(stand)
        strokes = tuple(
            self._cost(side, stand) // STROKE + len(strands - self._on[side]) for side in SIDES
        )
        return Needs(len(strands), strokes, self._black(stand, tape, strands))

    def frames(self, stand: Stand, tape: Tape, left: int, needs: Needs) -> int:
        """Each strand, and black, is recorded from its first frame to its last.

        A recording more can at most leave out one stretch between them.
        """
        missing = self._missing(stand)
        laid = [merged(lacks) for lacks in missing.values()]
        black = merged(self.black_ranges(stand, tape)) if needs.black else []
        gaps = [gap for ranges in (*laid, black) for gap in _gaps(ranges)]
        spare = max(0, left - needs.black - needs.strands)
        least = sum(map(_hull, laid)) - sum(sorted(gaps, reverse=True)[:spare])
        tight = (
            side for side, n in zip(SIDES, needs.strokes, strict=True) if n + needs.black == left
        )
        strokes = [self._stroked(side, stand, missing) for side in tight]
        return max([least, *strokes]) + (_hull(black) if black else 0)

    def black_ranges(self, stand: Stand, tape: Tape) -> Iterator[tuple[int, int]]:
        """What black has to be laid over."""
        yield from self.leads(stand, tape)
        yield from ((start, end) for _, start, end in stand.extra)

    def _stroked(self, side: Side, stand: Stand, missing: Missing) -> int:
        """The frames of the strokes on one track, and of what has no part on it."""
        for number in self.target.sides[side]:
            if number in stand.missing and stand.missing[number] != (
                self.target.parts[number][:2],
            ):
                return 0
        others = (lacks for strand, lacks in missing.items() if strand not in self._on[side])
        return self._cost(side, stand) % STROKE + sum(_length(merged(lacks)) for lacks in others)

    def _strands(self, stand: Stand) -> set[Strand]:
        return {self.target.parts[number].strand for number in stand.missing}

    def _missing(self, stand: Stand) -> Missing:
        missing: Missing = {}
        for number, lacks in stand.missing.items():
            missing.setdefault(self.target.parts[number].strand, []).extend(lacks)
        return missing

    def _black(self, stand: Stand, tape: Tape, strands: Iterable[Strand]) -> int:
        """Before a shot that follows none on its track, what is laid anew must be black.

        It is laid with a picture and a sound, and as a machine rolls on new pulses an
        assemble that ends before it can't wipe all of it again.
        """
        if self.target.bench.relock == 0:
            return 0
        if any(strand.source == self.target.brief.black for strand in strands):
            return 0
        return int(bool(stand.extra) or any(self.leads(stand, tape)))

    def leads(self, stand: Stand, tape: Tape) -> Iterator[tuple[int, int]]:
        """What has to be laid anew, or over again, so that what is missing can begin.

        Where the pulses just before it begin too late they go, and new ones are laid up
        to the shot; so is what lacks pulses before them. A recording that begins early,
        for its source's run-up, lies where it must not; so does one that lays pulses where
        only one track wants something.
        """
        run_up = max(self.target.bench.lock, self.target.bench.relock)
        for number, reached in self.target.heads.items():
            start = self.target.parts[number].start
            lacks = stand.missing.get(number)
            if lacks and lacks[0][0] == start:
                pulses = tape.control.at(start - 1)
                phase = pulses.start if pulses else start
                if phase > max(0, start - run_up):
                    yield from self._laid_anew(tape, max(reached, start - run_up), phase, start)
                early = max(self._early[number], reached)
                yield from overlapping(
                    self.target.free[self.target.parts[number].side], early, start
                )
        for number, lacks in stand.missing.items():
            for start, end in self._alone.get(number, ()):
                for lack in overlapping(lacks, start, end):
                    bare = stretches(tape.control.laid, *lack)
                    yield from ((first, last) for first, last, run in bare if run is None)

    def _laid_anew(
        self, tape: Tape, first: int, phase: int, start: int
    ) -> Iterator[tuple[int, int]]:
        if max(first, phase) < start:
            yield max(first, phase), start
        for begin, end, run in stretches(tape.control.laid, first, max(first, phase)):
            if run is None:
                yield begin, end

    @cached_property
    def _alone(self) -> dict[int, Ranges]:
        """Where each of the parts lies while the other track is free."""
        other: dict[Side, Side] = {"picture": "sound", "sound": "picture"}
        alone = (
            (number, list(overlapping(self.target.free[other[part.side]], part.start, part.end)))
            for number, part in enumerate(self.target.parts)
        )
        return {number: ranges for number, ranges in alone if ranges}

    @cached_property
    def _early(self) -> dict[int, int]:
        """Where the sources' run-ups let each of the heads begin."""
        parts = self.target.parts
        found = {
            n: source_start(self.target, parts[n].strand, parts[n].start) for n in self.target.heads
        }
        return {n: parts[n].start if start is None else start for n, start in found.items()}

    def _cost(self, side: Side, stand: Stand) -> int:
        """Strokes and frames that complete one track."""
        groups = self._groups[side]
        if groups is not None:
            return sum(to_complete(numbers, stand.missing, costs) for numbers, costs in groups)
        lacking = (n for n in self.target.sides[side] if n in stand.missing)
        return sum(STROKE + _length(stand.missing[number]) for number in lacking)

    @cached_property
    def _on(self) -> dict[Side, frozenset[Strand]]:
        """The strands that have a part on each track."""
        parts = self.target.parts
        return {
            side: frozenset(parts[number].strand for number in numbers)
            for side, numbers in self.target.sides.items()
        }

    @cached_property
    def _groups(self) -> dict[Side, list[PartGroup] | None]:
        """The parts of each track; None where no stroke can lay two of them."""
        return {side: self._grouped(side) for side in SIDES}

    def _grouped(self, side: Side) -> list[PartGroup] | None:
        numbers = self.target.sides[side]
        if len(self._on[side]) == len(numbers):
            return None
        groups: list[list[int]] = [[]]
        for number in numbers if len(numbers) <= LONGEST else ():
            if groups[-1] and self._kept_between(side, groups[-1][-1], number):
                groups.append([])
            groups[-1].append(number)
        return [
            PartGroup(tuple(group), from_nothing([self.target.parts[number] for number in group]))
            for group in groups
        ]

    def _kept_between(self, side: Side, before: int, after: int) -> bool:
        start, end = self.target.parts[before].end, self.target.parts[after].start
        kept = (kept for kept in self.target.brief.kept if kept.track == side)
        return any(each.start < end and start < each.end for each in kept)


def _length(ranges: Iterable[tuple[int, int]]) -> int:
    return sum(end - start for start, end in ranges)


def _hull(ranges: Ranges) -> int:
    """From the first frame of ranges in order to the last."""
    return ranges[-1][1] - ranges[0][0]


def _gaps(ranges: Ranges) -> Iterator[int]:
    """How long the stretches between ranges in order are."""
    return (start - end for (_, end), (start, _) in pairwise(ranges))
