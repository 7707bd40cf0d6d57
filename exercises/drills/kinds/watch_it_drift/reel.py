"""Takes of one source tape that follow one another on a prepared edit master."""

from collections.abc import Sequence
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kinds.knobs.job import SNR
from exercises.drills.media.medium import Picture
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import FOOTAGE
from exercises.drills.setting.quay_street import TAPES
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import Settings
from exercises.signal.lines import Lines


class DriftingReel:
    """Which takes go where, and what each looks like when it is played."""

    def __init__(self, draw: Draw, settings: Settings, takes: int) -> None:
        self.draw = draw
        self.scene = Scene(draw, settings)
        self.tape = draw.pick(TAPES)
        self.shots = draw.shuffled(tuple(FOOTAGE))[:takes]
        self.frames = [draw.whole(0, 240) for _ in self.shots]
        self.start = self.scene.seconds(30, 240)
        self.scene.record(0, self.scene.length, "black")
        self.end = self.start
        for shot in self.shots:
            seen = (FOOTAGE[shot],)
            clip = self.scene.clip(self.scene.seconds(4, 9), seen, tape=self.tape)
            self.end = self.scene.insert(clip, self.end)

    def document(self, tracking: Sequence[int]) -> Json:
        """The session, each take copied with the player's tracking so far off."""
        document = self.scene.document()
        document["edits"] = [
            {**edit, "player": {"tracking": off}}
            for edit, off in zip(document["edits"], tracking, strict=True)
        ]
        return document

    def picture(self, take: int, look: dict[str, Any]) -> Picture:
        """A take's shot as it comes from the player."""
        whole = {"lines": Lines.of(self.scene.rate).total, "snr": SNR, "copies": 1, **look}
        return Picture(
            scene=self.shots[take], frame=self.frames[take], look=whole, display="monitor"
        )

    def facts(self) -> list[list[str]]:
        """What to look up before the copies: pairs of a term and its value."""
        scene = self.scene
        span = f"{scene.span(self.start, self.end)}, {scene.lasting(self.end - self.start)}"
        lines = Lines.of(scene.rate).total
        return [
            ["Source", f"{self.tape}, {len(self.shots)} takes"],
            ["On the edit master", span],
            ["Bench", f"{scene.room}, {scene.rate.label} frames a second, {lines} lines"],
        ]
