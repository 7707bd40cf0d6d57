"""What a source tape sounds like before anybody sets a level."""

from dataclasses import dataclass
from typing import Protocol

import numpy as np

from exercises.signal.sound.samples import Samples


class Sound(Protocol):
    """A sound as long as one likes: the same samples each time that they are read."""

    def read(self, start: int, count: int) -> Samples:
        """``count`` samples from ``start`` on; 0 is where the source begins."""


@dataclass(frozen=True, slots=True)
class Silence:
    def read(self, start: int, count: int) -> Samples:
        return np.zeros(count, np.float32)


@dataclass(frozen=True, slots=True, eq=False)
class Loop:
    """Samples that begin again where they end, without a seam."""

    samples: Samples

    def read(self, start: int, count: int) -> Samples:
        return np.take(self.samples, np.arange(start, start + count), mode="wrap")


@dataclass(frozen=True, slots=True)
class Mixed:
    """Several sounds at once."""

    sounds: tuple[Sound, ...]

    def read(self, start: int, count: int) -> Samples:
        mixed = np.zeros(count, np.float32)
        for sound in self.sounds:
            mixed += sound.read(start, count)
        return mixed


@dataclass(frozen=True, slots=True)
class Soundtrack:
    """What is to be heard, and the room around it, each at line-up level.

    How loud either is on a tape, the levels of its takes say.
    """

    voice: Sound
    room: Sound


SILENT = Soundtrack(Silence(), Silence())
