"""Two takes of an interview, each an edit of its own: the first is laid, the second is to be."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.media.medium import SourceSound
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.quay_street import TALKS
from exercises.drills.setting.scene import Clip, Scene
from exercises.drills.setting.settings import Settings
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import reel
from exercises.tape import Span

LEAD, TAIL = 500, 900  # ms of room tone in an edit before the line and after it
SPOKEN = ("keeper-1", "keeper-2", "keeper-4", "keeper-6", "keeper-7")  # those with a pause


@dataclass(frozen=True, slots=True, kw_only=True)
class TakeLevels:
    """In 0.1 dB over line-up: the speech of each take; `under` is how far the rooms lie below."""

    first: int
    second: int
    under: int


class Takes:
    """A take from each of two tapes, one after the other on a prepared edit master."""

    def __init__(self, draw: Draw, settings: Settings, levels: TakeLevels) -> None:
        self.draw = draw
        self.scene = Scene(draw, settings)
        self.levels = levels
        self.said = draw.shuffled(SPOKEN)[:2]
        self.clips = [self._clip(line) for line in self.said]
        self.at = self.scene.seconds(30, 240)
        self.scene.record(0, self.scene.length, "black")
        self.end = self.at
        for clip in self.clips:
            self.end = self.scene.insert(clip, self.end)

    @property
    def are_two(self) -> bool:
        return self.clips[0].tape != self.clips[1].tape

    def sounds(self) -> dict[str, SourceSound]:
        """What is on each of the tapes."""
        return {
            clip.tape: SourceSound(lines=(line,), begin=self._begins(clip))
            for clip, line in zip(self.clips, self.said, strict=True)
        }

    def document(self, *, marked: bool = True) -> Json:
        """The session, with what the takes carry, the first made as it should be.

        Sound marks are for judging, not for hearing.
        """
        document = self.scene.document()
        both = (self.levels.first, self.levels.second)
        for clip, line, level in zip(self.clips, self.said, both, strict=True):
            (take,) = document["sources"][clip.tape]["takes"]
            take["levels"] = {"sound": level, "room": level - self.levels.under}
            if marked:
                take["marks"] = dict(self._marks(clip, line))
        document["edits"][0]["sound_level"] = {"mode": "by hand", "gain": -self.levels.first}
        return document

    def facts(self) -> list[list[str]]:
        """What to look up before the copy: pairs of a term and its value."""
        scene = self.scene
        first, second = self.clips
        cut = self.at + first.length
        return [
            ["First take, laid", f"{first.tape}, on the edit master {scene.span(self.at, cut)}"],
            ["Second take", f"{second.tape}, {scene.span(second.in_, second.out)}"],
            ["It goes to", f"{scene.span(cut, self.end)}, {scene.lasting(second.length)}"],
            ["Bench", f"{scene.room}, {scene.rate.label} frames a second"],
        ]

    def _clip(self, line: str) -> Clip:
        ms = LEAD + lines()[line].length + TAIL
        return self.scene.clip(round(ms * self._rate / 1000), TALKS[:3])

    def _begins(self, clip: Clip) -> int:
        """ms into the tape at which the line begins."""
        return round(clip.in_ * 1000 / self._rate) + LEAD

    def _marks(self, clip: Clip, line: str) -> Iterator[tuple[str, list[dict[str, Any]]]]:
        marks = reel(line, begin=self._begins(clip)).marks(self.scene.rate)
        for name, spans in (("words", marks.words), ("breaths", marks.breaths)):
            yield name, list(map(Span._asdict, spans))

    @property
    def _rate(self) -> Fraction:
        return self.scene.rate.fraction
