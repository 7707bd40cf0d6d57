"""Makes the recordings and their marks from ``script.toml``; see ``README.md``.

Run as ``python -m exercises.signal.speech.making``.
"""

import json
import wave as wav
from collections.abc import Iterable
from itertools import pairwise
from pathlib import Path
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import BLOCK, RATE, Samples, milliseconds
from exercises.signal.speech.breath import breath
from exercises.signal.speech.levelling import levelled
from exercises.signal.speech.phrase import phrase
from exercises.signal.speech.script import Part, script
from exercises.signal.speech.synthesis import Voice, speak

HERE = Path(__file__).parent
BREATH = 340 * BLOCK  # samples
BEFORE_BREATH, AFTER_BREATH = 90 * BLOCK, 50 * BLOCK
TAKEN_IN = "[breath]"

Stretch = tuple[int, int]


class Draft:
    """A line in the making: parts laid one after another, and where they came to lie."""

    def __init__(self) -> None:
        self.parts: list[NDArray[np.float64]] = []
        self.length = 0
        self.words: list[tuple[str, int, int]] = []
        self.breaths: list[Stretch] = []

    def lay(self, samples: NDArray[np.float64]) -> int:
        """Where the samples came to lie."""
        at, self.length = self.length, self.length + len(samples)
        self.parts.append(samples)
        return at

    def say(self, text: str, voice: Voice) -> None:
        spoken = phrase(speak(text, voice))
        at = self.lay(spoken.samples)
        for word, (start, end) in zip(text.split(), spoken.words, strict=True):
            self.words.append((word, at + start, at + end))

    def pause(self, samples: int) -> None:
        self.lay(np.zeros(samples))

    def breathe(self) -> None:
        """The place of a breath: its sound is added once the speech is at its level."""
        if self.length:
            self.pause(BEFORE_BREATH)
        at = self.lay(np.zeros(BREATH))
        self.breaths.append((at, at + BREATH))
        self.pause(AFTER_BREATH)


def drafted(says: Iterable[Part], voice: Voice) -> Draft:
    draft = Draft()
    for part in says:
        if isinstance(part, int):
            draft.pause(part * BLOCK)
        elif part == TAKEN_IN:
            draft.breathe()
        else:
            draft.say(part, voice)
    return draft


def recorded(draft: Draft, name: str) -> Samples:
    """The line at its level, with its breaths."""
    wave = levelled(np.concatenate(draft.parts)).astype(np.float32)
    for start, end in draft.breaths:
        wave[start:end] += breath(crc32(f"{name} {start}".encode()), end - start)
    return wave


def marks(draft: Draft) -> dict[str, object]:
    """In ms: words, breaths, and the pauses between words that are more than a closing lip."""
    words = [(word, milliseconds(start), milliseconds(end)) for word, start, end in draft.words]
    gaps = pairwise(words)
    return {
        "words": words,
        "breaths": [tuple(map(milliseconds, each)) for each in draft.breaths],
        "pauses": [(before[2], after[1]) for before, after in gaps if after[1] - before[2] >= 150],
    }


def write(path: Path, samples: Samples) -> None:
    with wav.open(str(path), "wb") as file:
        file.setparams((1, 2, RATE, len(samples), "NONE", ""))
        file.writeframes(np.round(samples * 2**15).astype("<i2").tobytes())


def make() -> None:
    lines = {}
    for name, line in script().items():
        draft = drafted(line.says, line.voice)
        write(HERE / f"{name}.wav", recorded(draft, name))
        lines[name] = {"speaker": line.speaker, **marks(draft)}
    text = ",\n".join(f'"{name}": {json.dumps(line)}' for name, line in lines.items())
    (HERE / "lines.json").write_text("{\n" + text + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    make()
