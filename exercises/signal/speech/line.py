"""The recorded lines of the interview, with what is heard in them."""

import json
import wave
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np

from exercises.signal.sound.samples import Samples

HERE = Path(__file__).parent


class LineStretch(NamedTuple):
    """``[start, end)`` in ms."""

    start: int
    end: int

    def later(self, by: int) -> "LineStretch":
        return LineStretch(self.start + by, self.end + by)


class Word(NamedTuple):
    text: str
    heard: LineStretch

    def later(self, by: int) -> "Word":
        return Word(self.text, self.heard.later(by))


@dataclass(frozen=True, slots=True)
class Line:
    """One answer or question, in ms from its start.

    pauses  between words, with any breath that is taken in them
    """

    name: str
    speaker: str
    words: tuple[Word, ...]
    breaths: tuple[LineStretch, ...]
    pauses: tuple[LineStretch, ...]

    @property
    def text(self) -> str:
        return " ".join(word.text for word in self.words)

    @property
    def length(self) -> int:
        return self.words[-1].heard.end

    @property
    def samples(self) -> Samples:
        """A VU meter's needle reaches 0 at its loudest; between the words it is silent."""
        return _samples(self.name)


@cache
def lines() -> dict[str, Line]:
    """All of them, by name."""
    marked = json.loads((HERE / "lines.json").read_text(encoding="utf-8"))
    return {
        name: Line(
            name,
            line["speaker"],
            tuple(Word(text, LineStretch(start, end)) for text, start, end in line["words"]),
            tuple(LineStretch(*each) for each in line["breaths"]),
            tuple(LineStretch(*each) for each in line["pauses"]),
        )
        for name, line in marked.items()
    }


@cache
def _samples(name: str) -> Samples:
    with wave.open(str(HERE / f"{name}.wav"), "rb") as file:
        held = np.frombuffer(file.readframes(file.getnframes()), "<i2")
    samples = held.astype(np.float32) / np.float32(2**15)
    samples.flags.writeable = False
    return samples
