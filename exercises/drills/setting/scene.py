"""A session document in the making: a master, source tapes, and what was recorded so far."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil

from exercises.drills.asks import Json
from exercises.drills.setting.change import Mode
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import code, length, span
from exercises.drills.setting.quay_street import ACTIONS, BENCHES, PEOPLE, TAPES, Shot
from exercises.drills.setting.settings import Settings
from exercises.tape import SIDES, Bench, Rate, label

SHORTEST = 10 * 60  # seconds of an edit master, where the bench's figures are usual


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

    @property
    def take(self) -> tuple[int, int]:
        """The take that it begins in."""
        return next(take for take in self.takes if take[0] <= self.in_ < take[1])


class Scene:
    """Who works on which bench, with which tapes. Every question has one of its own.

    Lengths are drawn as at a bench with the usual figures. Where its machines need more, all
    of them grow alike, so that what has room there has room here.
    """

    def __init__(self, draw: Draw, settings: Settings) -> None:
        self.draw = draw
        self.settings = settings.at(draw.pick(tuple(Rate)))
        self.bench = self.settings.bench
        self.rate = self.bench.rate
        self.usual = Bench.default(self.rate)
        self.spare = 0  # frames of pre-roll that have been set beyond what a machine needs
        self.person = draw.pick(PEOPLE)
        self.room = draw.pick(BENCHES)
        drawn = draw.pick((10, 15, 20, 30)) * 60 * self.rate.nominal
        self.length = max(drawn, ceil(SHORTEST * self.rate.nominal * self._growth))
        self._unused: dict[tuple[Shot, ...], Iterator[Shot]] = {}
        self._recorded: list[Json] = []
        self._takes: dict[str, list[tuple[int, int]]] = {}
        self._reach: dict[str, int] = {}
        self._edits: list[Json] = []

    def document(self) -> Json:
        return {
            "rate": self.rate.label,
            **self.figures(),
            "master": {"length": self.length, "recorded": list(self._recorded)},
            "sources": {
                tape: {"takes": [{"start": first, "end": last} for first, last in takes]}
                for tape, takes in sorted(self._takes.items())
            },
            "edits": list(self._edits),
        }

    def figures(self) -> Json:
        """What differs from the usual figures, as a session document has it."""
        names = ("lock", "relock", "erase_gap", "drop_frame")
        own = {name: getattr(self.bench, name) for name in names}
        usual = {name: getattr(self.usual, name) for name in names}
        return {"bench": own} if own != usual else {}

    @property
    def _growth(self) -> Fraction:
        return max(Fraction(1), self._share("lock"), self._share("erase_gap"))

    def _share(self, figure: str) -> Fraction:
        return Fraction(getattr(self.bench, figure), getattr(self.usual, figure))

    def seconds(self, low: float, high: float) -> int:
        """A length between two numbers of seconds, to the frame."""
        return self._drawn(low, high, self._growth)

    def of_run_up(self, low: float, high: float) -> int:
        """A length as a share of the run-up that locks a machine, which is usually 5 seconds."""
        return self._drawn(low, high, self._share("lock"))

    @property
    def margin(self) -> int:
        """How far from what locks a machine a run-up stays, so that nobody decides by a frame.

        A second; at a bench that locks within four, a quarter of what it takes.
        """
        return min(self.rate.nominal, self.bench.lock // 4)

    def too_short(self, low: float, high: float) -> int:
        """A run-up that is clearly too short: shares of it as in `of_run_up`."""
        return self.clearly_short(self.of_run_up(low, high))

    def past_a_joint(self) -> int:
        """How far past new pulses: steady, but clearly too little run-up, if that can be."""
        return self.clearly_short(max(self.of_run_up(1.2, 3.5), self.bench.relock))

    def clearly_short(self, frames: int) -> int:
        return min(frames, self.bench.lock - self.margin)

    def of_gap(self, low: float, high: float) -> int:
        """A length as a share of what an assemble wipes past its end: usually 2 seconds."""
        return self._drawn(low, high, self._share("erase_gap"))

    def _drawn(self, low: float, high: float, share: Fraction) -> int:
        second = self.rate.nominal * share
        return self.draw.whole(round(low * second), round(high * second))

    def code(self, frame: int) -> str:
        return code(frame, self.bench)

    def span(self, start: int, end: int) -> str:
        return span(start, end, self.bench)

    def lasting(self, frames: int) -> str:
        return length(frames, self.rate)

    def counted(self, frames: int) -> str:
        """Frames as a counter shows them: it leaves no labels out."""
        return label(frames, self.rate)

    def set_pre_roll(self, more: int) -> None:
        """A pre-roll longer than what the machines need by so much; of whole seconds, if long."""
        second = self.rate.nominal
        more = more // second * second or more
        self.settings = replace(self.settings, pre_roll=self.bench.lock + more)
        self.spare = more

    @property
    def pre_roll(self) -> str:
        """`pre-roll 5 seconds`, and what else nobody could guess who knows usual benches."""
        told, bench = f"pre-roll {self.lasting(self.settings.pre_roll)}", self.bench
        if self.settings.pre_roll != bench.lock:
            told += f", of which a machine needs {self.lasting(bench.lock)} to lock"
        if bench.relock != self.usual.relock:
            told += f"; where pulses jump, a picture rolls for {self.lasting(bench.relock)}"
        return told

    @property
    def wiping(self) -> str:
        """`past an assemble the recorder wipes 2 seconds`."""
        gap = self.bench.erase_gap
        return f"past an assemble the recorder wipes {self.lasting(gap) if gap else 'nothing'}"

    def clip(
        self,
        frames: int,
        shots: tuple[Shot, ...] = ACTIONS,
        *,
        run_up: int | None = None,
        stops: int | None = None,
        joint: int | None = None,
        tape: str | None = None,
        touches: int | None = None,
    ) -> Clip:
        """A stretch of a new take, with more run-up than the machines need unless told.

        It shows a shot that the scene has not used yet. The take ends after it, or within
        it after `stops` frames, or gives way to another take after `joint` frames. Right
        before it, without a gap, lies another of `touches` frames, where that is said.
        `tape` names the source tape, where it is not left to the draw.
        """
        tape = tape or self.draw.pick(TAPES)
        reach = self._reach[tape] if tape in self._reach else self.seconds(0, 900)
        first = reach + self.seconds(1, 40) + (touches or 0)
        in_ = first + (self.seconds(7, 25) if run_up is None else run_up)
        last = in_ + frames + self.seconds(4, 12) if stops is None else in_ + stops
        takes = ((first, last),) if joint is None else ((first, in_ + joint), (in_ + joint, last))
        if touches:
            takes = ((first - touches, first), *takes)
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
