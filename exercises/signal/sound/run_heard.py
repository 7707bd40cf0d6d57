"""One run of a sound track, as it was recorded."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from exercises.signal.sound.hiss import hissing
from exercises.signal.sound.recorder import SoundChannel
from exercises.signal.sound.samples import BLOCK, RATE, Samples, sample_at
from exercises.signal.sound.saturation import saturated
from exercises.signal.sound.soundtrack import Soundtrack
from exercises.signal.sound.wow import Unsteady, read_unsteadily
from exercises.tape.bench import Bench
from exercises.tape.levels import Levels, gained
from exercises.tape.machines import SoundMode
from exercises.tape.runs import Run
from exercises.tape.track import Laid

CHUNK = 256 * BLOCK  # samples worked on at a time
MEMORY = 5 * RATE  # samples after which a gain has forgotten how it began
SOURCE_HISS = 2  # its seed; the master's own has another


@dataclass(frozen=True, slots=True)
class RunHeard:
    """``unsteady`` is where the player hunts, in samples of the master."""

    run: Run[Laid]
    levels: Levels | None
    soundtrack: Soundtrack
    bench: Bench
    unsteady: tuple[Unsteady, ...]

    def between(self, start: int, end: int) -> Iterator[Samples]:
        """Samples of the master from ``start`` up to ``end``, in pieces."""
        if self.levels is None:
            yield from silence(end - start)
            return
        laid = self.run.value
        channel = SoundChannel(laid.made.machines.sound, self.bench, self.levels)
        for at in range(start - self._warm_up(start), end, CHUNK):
            held = channel.record(self._played(at, min(CHUNK, end - at), self.levels))
            if at + len(held) > start:
                yield held[max(0, start - at) :]

    def _played(self, at: int, count: int, levels: Levels) -> Samples:
        """What the source gives while the master is at ``at``."""
        positions, unsteady = np.arange(at, at + count), self._unsteady()
        start = at + self._shift()
        sound = np.zeros(count, np.float32)
        for part, level in (
            (self.soundtrack.voice, levels.sound),
            (self.soundtrack.room, levels.room),
        ):
            heard = read_unsteadily(part, start, positions, unsteady)
            sound += heard * np.float32(gained(1, level))
        copies = self.run.value.generation - 1
        hiss = hissing(start, count, recordings=copies, seed=SOURCE_HISS)
        return saturated(sound) + hiss if copies else sound

    def _shift(self) -> int:
        """From a sample of the master to the source's."""
        rate = self.bench.rate
        return sample_at(self.run.value.frame, rate) - sample_at(self.run.start, rate)

    def _unsteady(self) -> tuple[Unsteady, ...]:
        if self.run.value.settled:
            return self.unsteady
        rate = self.bench.rate
        hunting = Unsteady(sample_at(self.run.start, rate), sample_at(self.run.end, rate))
        return (*self.unsteady, hunting)

    def _warm_up(self, start: int) -> int:
        """How many samples earlier to begin, so that the gain stands where it did.

        In whole ms of the source, wherever the master is entered.
        """
        laid = self.run.value
        if laid.made.machines.sound.mode is SoundMode.BY_HAND:
            return 0
        began = laid.frame if laid.made.since is None else laid.made.since
        first = sample_at(max(0, began - self.bench.lock), self.bench.rate)
        heard = start + self._shift()
        return heard - max(first, heard - MEMORY) // BLOCK * BLOCK


def silence(samples: int) -> Iterator[Samples]:
    for at in range(0, samples, CHUNK):
        yield np.zeros(min(CHUNK, samples - at), np.float32)
