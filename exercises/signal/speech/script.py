"""What is to be said, as ``script.toml`` has it."""

import tomllib
from dataclasses import dataclass
from pathlib import Path

from exercises.signal.speech.synthesis import Voice

Part = str | int  # a phrase, or a pause in ms


@dataclass(frozen=True, slots=True)
class Scripted:
    speaker: str
    voice: Voice
    says: tuple[Part, ...]


def script() -> dict[str, Scripted]:
    """The lines, by name."""
    file = Path(__file__).with_suffix(".toml")
    read = tomllib.loads(file.read_text(encoding="utf-8"))
    voices = {name: Voice(**values) for name, values in read.pop("speakers").items()}
    return {
        name: Scripted(line["speaker"], voices[line["speaker"]], tuple(line["says"]))
        for name, line in read.items()
    }
