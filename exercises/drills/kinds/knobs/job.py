"""One copy that is about to be made: a take of the film, onto a prepared edit master."""

from collections.abc import Sequence
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.media.medium import Picture
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import EVERYTHING
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import Settings
from exercises.signal.lines import Lines

SNR = 46.0  # dB of one recording: the bench's usual figure


class KnobJob:
    """Which shot goes where, and what it looks like when it is played."""

    def __init__(
        self,
        draw: Draw,
        settings: Settings,
        shots: Sequence[str],
        *,
        low: float = 4.0,
        high: float = 12.0,
    ) -> None:
        self.draw = draw
        self.scene = Scene(draw, settings)
        self.shot = draw.pick(shots)
        self.frame = draw.whole(0, 240)
        self.clip = self.scene.clip(self.scene.seconds(low, high), (EVERYTHING[self.shot],))
        self.at = self.scene.seconds(30, 240)
        self.scene.record(0, self.scene.length, "black")
        self.scene.insert(self.clip, self.at)

    @property
    def lines(self) -> Lines:
        return Lines.of(self.scene.rate)

    def document(self, levels: Json | None = None) -> Json:
        """The session, with what the take carries."""
        document = self.scene.document()
        if levels:
            (take,) = document["sources"][self.clip.tape]["takes"]
            take["levels"] = levels
        return document

    def picture(self, look: dict[str, Any], *, display: str = "monitor", frame: int = 0) -> Picture:
        """The shot as it comes from the player, so many frames on."""
        whole = {"lines": self.lines.total, "snr": SNR, "copies": 1, **look}
        return Picture(scene=self.shot, frame=self.frame + frame, look=whole, display=display)

    def facts(self) -> list[list[str]]:
        """What to look up before the copy: pairs of a term and its value."""
        scene, clip = self.scene, self.clip
        return [
            ["Source", f"{clip.tape}: {clip.shot.picture}. Heard with it: {clip.shot.sound}."],
            ["Edit in and out there", scene.span(clip.in_, clip.out)],
            [
                "On the edit master",
                f"{scene.span(self.at, self.at + clip.length)}, {scene.lasting(clip.length)}",
            ],
            [
                "Bench",
                f"{scene.room}, {scene.rate.label} frames a second, {self.lines.total} lines",
            ],
        ]
