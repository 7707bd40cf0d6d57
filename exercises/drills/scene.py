"""A session document in the making: a master, source tapes, and what was recorded so far."""

from collections.abc import Iterator
from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.change import Mode
from exercises.drills.draw import Draw
from exercises.drills.phrases import length, span
from exercises.drills.quay_street import ACTIONS, BENCHES, PEOPLE, TAPES, Shot
from exercises.drills.wants import SIDES
from exercises.tape import Bench, Rate, label


@dataclass(frozen=True, slots=True)
class Clip:
    """`[in_, out)` of a source tape, and the takes around it, `[first, last)` each."""

    tape: str
    in_: int
    out: int
    takes: tuple[tuple[int, int], ...]
    shot: Shot

    @property
    def length(self) -> int:
        return self.out - self.in_


class Scene:
    """Who works on which bench, with which tapes. Every question has one of its own."""

    def __init__(self, draw: Draw) -> None:
        self.draw = draw
        self.rate = draw.pick(tuple(Rate))
        self.bench = Bench.default(self.rate)
        self.person = draw.pick(PEOPLE)
        self.room = draw.pick(BENCHES)
        self.length = draw.pick((10, 15, 20, 30)) * 60 * self.rate.nominal
        self._unused: dict[tuple[Shot, ...], Iterator[Shot]] = {}
        self._recorded: list[Json] = []
        self._takes: dict[str, list[tuple[int, int]]] = {}
        self._reach: dict[str, int] = {}
        self._edits: list[Json] = []

    def document(self) -> Json:
        return {
            "rate": self.rate.label,
            "master": {"length": self.length, "recorded": list(self._recorded)},
            "sources": {
                tape: {"takes": [{"start": first, "end": last} for first, last in takes]}
                for tape, takes in sorted(self._takes.items())
            },
            "edits": list(self._edits),
        }

    def seconds(self, low: float, high: float) -> int:
        """A length between two numbers of seconds, to the frame."""
        second = self.rate.nominal
        return self.draw.whole(round(low * second), round(high * second))

    def code(self, frame: int) -> str:
        return label(frame, self.rate)

    def span(self, start: int, end: int) -> str:
        return span(start, end, self.rate)

    def lasting(self, frames: int) -> str:
        return length(frames, self.rate)

    def clip(
        self,
        frames: int,
        shots: tuple[Shot, ...] = ACTIONS,
        *,
        run_up: int | None = None,
        stops: int | None = None,
        joint: int | None = None,
    ) -> Clip:
        """A stretch of a new take, with more run-up than the machines need unless told.

        It shows a shot that the scene has not used yet. The take ends after it, or within
        it after `stops` frames, or gives way to another take after `joint` frames.
        """
        tape = self.draw.pick(TAPES)
        reach = self._reach[tape] if tape in self._reach else self.seconds(0, 900)
        first = reach + self.seconds(1, 40)
        in_ = first + (self.seconds(7, 25) if run_up is None else run_up)
        last = in_ + frames + self.seconds(4, 12) if stops is None else in_ + stops
        takes = ((first, last),) if joint is None else ((first, in_ + joint), (in_ + joint, last))
        self._takes.setdefault(tape, []).extend(takes)
        self._reach[tape] = max(last, in_ + frames)
        if shots not in self._unused:
            self._unused[shots] = iter(self.draw.shuffled(shots))
        return Clip(tape, in_, in_ + frames, takes, next(self._unused[shots]))

    def record(self, start: int, end: int, what: str) -> None:
        """A pass that was recorded before the first edit; passes come in order."""
        self._recorded.append({"start": start, "end": end, "what": what})

    def lay(self, clip: Clip, at: int, mode: Mode) -> int:
        """Add an edit in a mode; the frame where it ends."""
        if mode is Mode.ASSEMBLE:
            return self.assemble(clip, at)
        picture, sound = (track in mode.tracks for track in SIDES)
        return self.insert(clip, at, picture=picture, sound=sound)

    def assemble(self, clip: Clip, at: int) -> int:
        """Add an assemble; the frame where it ends."""
        self._edits.append({"mode": "assemble", **_place(clip, at)})
        return at + clip.length

    def insert(self, clip: Clip, at: int, *, picture: bool = True, sound: bool = True) -> int:
        """Add an insert; the frame where it ends."""
        tracks = {"picture": picture, "sound": sound}
        self._edits.append({"mode": "insert", **tracks, **_place(clip, at)})
        return at + clip.length


def opening(scene: Scene) -> str:
    """A first sentence: who works where, on what."""
    person, room = scene.person, scene.room
    return scene.draw.pick(
        (
            f"{person} is cutting The Bridge Keeper on {room}.",
            f"{person} has {room} until noon, for The Bridge Keeper.",
            f"On {room}, {person} is working on The Bridge Keeper.",
            f"It is {person}’s turn on {room}. The film is The Bridge Keeper.",
            f"{person} sits at {room} with the edit master of The Bridge Keeper.",
        )
    )


def _place(clip: Clip, at: int) -> Json:
    return {"source": clip.tape, "in": clip.in_, "out": clip.out, "at": at}
