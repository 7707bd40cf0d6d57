"""A brief in the form that a search needs: what must come from where, cut into parts."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.faults import FaultKind
from exercises.tape.judging.brief import Brief
from exercises.tape.judging.extras import free
from exercises.tape.judging.faulty import faulty
from exercises.tape.judging.ranges import Ranges, merged
from exercises.tape.machines import WELL_ADJUSTED, Recorder
from exercises.tape.source import Source, Take
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.work import spend

# Faults that lie in how a stretch was recorded, not in where it was cut.
MADE_BADLY = {
    FaultKind.FLAT_PICTURE,
    FaultKind.CLIPPED_PICTURE,
    FaultKind.WEAK_SOUND,
    FaultKind.DISTORTED_SOUND,
    FaultKind.PRESSED_SOUND,
    FaultKind.NOISY_PAUSES,
    FaultKind.NOISE_BAND,
    FaultKind.BENT_VERTICALS,
    FaultKind.RECORDER_OFF_POSITION,
    FaultKind.TOO_MANY_GENERATIONS,
}


class Strand(NamedTuple):
    """A source at one offset: ``shift`` is master frame less source frame.

    All that is wanted of a strand can come from one recording.
    """

    source: str
    shift: int


class WantedPart(NamedTuple):
    """``[start, end)`` of one track, wanted from one strand; as long as can be."""

    start: int
    end: int
    side: Side
    strand: Strand


@dataclass(frozen=True)
class Target:
    """What a tape is to become, and with what."""

    brief: Brief
    before: Tape
    sources: Mapping[str, Source]
    bench: Bench
    parts: tuple[WantedPart, ...] = field(init=False)

    def __post_init__(self) -> None:
        parts = [part for side in SIDES for part in _parts(self.brief, side)]
        object.__setattr__(self, "parts", tuple(sorted(parts)))

    @cached_property
    def strands(self) -> dict[Strand, tuple[int, ...]]:
        """The parts of each strand, by their numbers, in order."""
        numbers: dict[Strand, list[int]] = {}
        for number, part in enumerate(self.parts):
            numbers.setdefault(part.strand, []).append(number)
        return {strand: tuple(of_it) for strand, of_it in numbers.items()}

    @cached_property
    def sides(self) -> dict[Side, tuple[int, ...]]:
        """The parts of each track, by their numbers, in order."""
        return {
            side: tuple(n for n, part in enumerate(self.parts) if part.side == side)
            for side in SIDES
        }

    @cached_property
    def seams(self) -> tuple[int, ...]:
        """Where a shot may have to be laid in two, since what is kept or has pulses ends there."""
        if not self.brief.kept:
            return ()
        edges = {edge for kept in self.brief.kept for edge in (kept.start, kept.end)}
        return tuple(sorted(edges | {run.end for run in self.before.control.laid}))

    @cached_property
    def free(self) -> dict[Side, tuple[tuple[int, int], ...]]:
        """Where nothing new may lie but black: on tracks with wanted shots, between them."""
        return {
            side: tuple(free(self.brief, side, self.before.length)) if self.sides[side] else ()
            for side in SIDES
        }

    @cached_property
    def spoiled(self) -> dict[Side, Ranges]:
        """Where the tape holds what is wanted, but badly made: another copy may be better."""
        found = faulty(self.brief, self.before, self.before, self.bench)
        return {
            side: merged(
                (fault.start, fault.end)
                for fault in found
                if fault.kind in MADE_BADLY and fault.track == side
            )
            for side in SIDES
        }

    @cached_property
    def heads(self) -> dict[int, int]:
        """The parts that no other of their track runs up to, and where the one before ends."""
        lone = {}
        for numbers in self.sides.values():
            reached = 0
            for number in numbers:
                if self.parts[number].start > reached or reached == 0:
                    lone[number] = reached
                reached = self.parts[number].end
        return lone

    @cached_property
    def recorder(self) -> Recorder:
        """The machine that the master was begun on, if it was begun on one."""
        used = {run.value.made.machines.recorder for run in self.before.picture.laid}
        if len({recorder.name for recorder in used}) != 1:
            return WELL_ADJUSTED.recorder
        first = min(used, key=lambda recorder: (abs(recorder.tracking), recorder.snr or 0))
        return Recorder(first.name, snr=first.snr)

    def takes(self, strand: Strand) -> Iterator[tuple[int, int, Take]]:
        """The takes of a strand with the master frames that they could fill."""
        source = self.sources.get(strand.source)
        takes = source.takes if source else ()
        spend(1 + len(takes) // 16)
        for take in takes:
            yield take.start + strand.shift, take.end + strand.shift, take


def _parts(brief: Brief, side: Side) -> Iterator[WantedPart]:
    held: WantedPart | None = None
    for shot in brief.on(side):
        strand = Strand(shot.source, shot.shift)
        if held and held.end == shot.at and held.strand == strand:
            held = held._replace(end=shot.end)
            continue
        if held:
            yield held
        held = WantedPart(shot.at, shot.end, side, strand)
    if held:
        yield held
