"""Two shots of the film and the cut between them, as a session that a situation may spoil."""

from exercises.drills.asks import Json
from exercises.drills.media.seen import Footage
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import FOOTAGE
from exercises.drills.setting.quay_street import TAPES
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import Settings

LATEST = 240  # the frame of a scene that a take begins with, at the latest


class ShotAtCut:
    """A shot on one side of the cut: its take, and how it was copied."""

    def __init__(self, scene: Scene, tape: str, name: str, white: int) -> None:
        draw = scene.draw
        self.tape = tape
        self.name = name
        self.in_ = scene.seconds(7, 20)
        self.length = scene.seconds(6, 12)
        self.stops = self.out + 100  # where its take ends
        self.dropouts = 0.0  # of the tape itself, in a frame
        self.began = draw.whole(0, LATEST)  # the frame of the scene at the edit in
        self.take: Json = {
            "generation": draw.whole(1, 2),
            "levels": {"white": white + draw.whole(-3, 3)},
        }
        self.machines: Json = {
            "picture_level": {"gain": 0},
            "player": {"tracking": draw.whole(-30, 30), "skew": draw.whole(-2, 2)},
        }

    @property
    def out(self) -> int:
        return self.in_ + self.length

    @property
    def footage(self) -> Footage:
        return Footage(self.name, self.in_ - self.began, self.dropouts)

    def source(self) -> Json:
        return {"takes": [{"start": 0, "end": self.stops, **self.take}]}


class CutFilm:
    """`first` and `second` meet at `cut`; `left` frames of a `third` shot may lie between.

    `leaves_black` says that black does.
    `joints` are frames where the recording of black began anew; `wiping` has the first shot
    assembled once the second is there.
    """

    def __init__(self, draw: Draw, settings: Settings) -> None:
        self.draw = draw
        self.scene = Scene(draw, settings)
        names, tapes = draw.shuffled(tuple(FOOTAGE))[:3], draw.shuffled(TAPES)[:3]
        white = draw.whole(93, 103)
        self.first, self.second, self.third = (
            ShotAtCut(self.scene, tape, name, white)
            for tape, name in zip(tapes, names, strict=True)
        )
        self.start = self.scene.seconds(40, 300)
        self.assembled = draw.chance(0.4)
        self.joints: list[int] = []
        self.left = 0
        self.leaves_black = False
        self.wiping = False

    @property
    def cut(self) -> int:
        return self.start + self.first.length

    @property
    def end(self) -> int:
        return self.cut + self.second.length

    def document(self) -> Json:
        sides = (self.first, self.second, self.third)
        recorded = [self.start] if self.assembled else [*self.joints, self.scene.length]
        begins = [0, *recorded[:-1]]
        return {
            "rate": self.scene.rate.label,
            **self.scene.figures(),
            "master": {
                "length": self.scene.length,
                "recorded": [
                    {"start": start, "end": end, "what": "black"}
                    for start, end in zip(begins, recorded, strict=True)
                ],
            },
            "sources": {side.tape: side.source() for side in sides},
            "edits": self._edits(),
        }

    def _edits(self) -> list[Json]:
        first = self._edit(self.first, self.start, short=self.left, assemble=self.wiping)
        second = self._edit(self.second, self.cut)
        if self.wiping:
            return [second, first]
        if self.left and not self.leaves_black:
            before = self.cut - self.third.length // 2
            return [self._edit(self.third, before), first, second]
        return [first, second]

    def _edit(self, side: ShotAtCut, at: int, *, short: int = 0, assemble: bool = False) -> Json:
        """An edit that ends `short` frames before its shot does."""
        mode: Json = {"mode": "insert", "picture": True, "sound": True}
        if self.assembled or assemble:
            mode = {"mode": "assemble"}
        points = {"in": side.in_, "out": side.out - short, "at": at}
        return {**mode, "source": side.tape, **points, **side.machines}

    @property
    def worn(self) -> list[str]:
        """The tapes that have dropouts of their own."""
        return [side.tape for side in (self.first, self.second) if side.dropouts]

    @property
    def footage(self) -> dict[str, Footage]:
        return {side.tape: side.footage for side in (self.first, self.second, self.third)}
