from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.setting.change import Change, Mode
from exercises.drills.setting.phrases import begun, listed, span
from exercises.drills.setting.scene import Clip
from exercises.tape import Bench, Side, Source


@dataclass(frozen=True, slots=True)
class Job:
    """One edit as it was made, the tracks that it was meant to change, and the purpose."""

    clip: Clip
    at: int
    mode: Mode
    meant: tuple[Side, ...]
    purpose: str

    @property
    def end(self) -> int:
        return self.at + self.clip.length

    def change(self, source: Source) -> Change:
        """What was wanted; `source` is the tape of the clip."""
        return Change(
            source=source, in_=self.clip.in_, out=self.clip.out, at=self.at, tracks=self.meant
        )

    def in_words(self, bench: Bench) -> Json:
        """The edit in words."""
        clip = self.clip
        takes = listed([span(*take, bench) for take in clip.takes])
        return {
            "mode": self.mode.words,
            "where": span(self.at, self.end, bench),
            "purpose": begun(self.purpose),
            "source": f"{clip.tape}, {span(clip.in_, clip.out, bench)}",
            "takes": f"the take there runs {takes}"
            if len(clip.takes) == 1
            else f"the takes there run {takes}",
        }
