"""Two takes of talk and the cut between them, as a session that a situation may spoil."""

from dataclasses import replace
from math import ceil

from exercises.drills.asks import Json
from exercises.drills.media.medium import SourceSound
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.quay_street import TAPES
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import Settings
from exercises.signal.sound.worn import dips
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import Reel, reel
from exercises.tape import Rate, Span

# Lines with a pause and a breath between two phrases.
IN_TWO = ("keeper-2", "keeper-4", "keeper-7")
KEEPER = tuple(name for name in lines() if name.startswith("keeper"))
MOST = 6  # seconds heard on either side of the cut
REACHES = (2, 4, MOST)  # and after it, so that a short clip says nothing
ASKED = tuple(name for name in lines() if name.startswith("ask"))


class TalkAtCut:
    """What is said on one side of the cut: a line, another after it, and how they are copied."""

    def __init__(self, scene: Scene, tape: str, names: tuple[str, str], level: int) -> None:
        draw = scene.draw
        self.tape = tape
        self.rate: Rate = scene.rate
        begin = draw.whole(6500, 12000) + longer_run_up(scene)
        self.sound = SourceSound(lines=names, begin=begin, pause=draw.whole(1300, 1900))
        self.before = draw.whole(250, 450)  # ms from the edit in to the line
        self.after = draw.whole(350, 550)  # and from the line's end to the edit out
        self.take: Json = {
            "generation": draw.whole(1, 2),
            "levels": {"sound": level + draw.whole(-10, 10)},
        }
        self.stops: int | None = None
        self.machines: Json = {"sound_level": {"mode": "by hand", "gain": 0}}
        self.in_ = self.frame(self.reel.placed[0].at - self.before)
        self.out = self.frame(self.reel.placed[0].end + self.after)

    @property
    def reel(self) -> Reel:
        return reel(*self.sound.lines, begin=self.sound.begin, pause=self.sound.pause)

    def frame(self, milliseconds: float) -> int:
        return max(0, round(milliseconds * self.rate.fraction / 1000))

    @property
    def words(self) -> list[tuple[str, Span]]:
        """Each word of the line and where it is heard, in frames of the source."""
        spans = self.reel.marks(self.rate).words
        return [(word.text, span) for word, span in zip(self.reel.words, spans, strict=True)]

    @property
    def line_words(self) -> list[tuple[str, Span]]:
        """Those of the first line."""
        return self.words[: len(self.reel.placed[0].line.words)]

    @property
    def breaths(self) -> tuple[Span, ...]:
        return self.reel.marks(self.rate).breaths

    def begin_at(self, milliseconds: int) -> None:
        """Say the line so soon after the start of the take."""
        self.sound = replace(self.sound, begin=milliseconds)
        self.in_ = self.frame(milliseconds - self.before)
        self.out = self.frame(self.reel.placed[0].end + self.after)

    def dips(self, at: int) -> list[tuple[float, float]]:
        """Where the sound dips of a side laid at `at`, in frames of the master."""
        if self.sound.worn is None:
            return []
        frame = self.rate.fraction / 1000
        first, last = (int(each / frame) for each in (self.in_, self.out))
        shift = at - self.in_
        return [
            (float(dip.start * frame) + shift, float(dip.end * frame) + shift)
            for dip in dips(first, last, since=self.sound.worn)
        ]

    def source(self) -> Json:
        end = self.stops or self.frame(self.reel.placed[-1].end) + 50
        marks = self.reel.marks(self.rate)
        kept = {"words": marks.words, "breaths": marks.breaths}
        told = {
            name: [{"start": span.start, "end": span.end} for span in spans if span.end <= end]
            for name, spans in kept.items()
        }
        return {"takes": [{"start": 0, "end": end, "marks": told, **self.take}]}


def longer_run_up(scene: Scene) -> int:
    """How many ms of run-up the machines need beyond the usual."""
    frames = max(0, scene.bench.lock - scene.usual.lock)
    return ceil(1000 * frames / scene.rate.fraction)


class Talk:
    """`first` and `second` meet at `cut`, and are heard up to `reach` seconds after it.

    With a `joint`, black was begun anew there; `wiping` has the first assembled once the
    second is there.
    """

    def __init__(self, draw: Draw, settings: Settings) -> None:
        self.draw = draw
        self.scene = Scene(draw, settings)
        tapes, level = draw.shuffled(TAPES)[:2], draw.whole(-12, 8)
        said, others = draw.shuffled(KEEPER), draw.shuffled(ASKED)
        first = others[0] if draw.chance(0.25) else said[0]
        pairs = ((first, said[1]), (said[2], said[3]))
        self.first, self.second = (
            TalkAtCut(self.scene, tape, names, level)
            for tape, names in zip(tapes, pairs, strict=True)
        )
        self.start = self.scene.seconds(40, 300)
        self.assembled = draw.chance(0.4)
        self.reach = self.draw.pick(REACHES)
        self.joint = False
        self.wiping = False

    @property
    def cut(self) -> int:
        return self.start + self.first.out - self.first.in_

    @property
    def end(self) -> int:
        return self.cut + self.second.out - self.second.in_

    @property
    def window(self) -> tuple[int, int]:
        """The part of the edit master that is played."""
        second = self.scene.rate.nominal
        first, last = self.cut - MOST * second, self.cut + self.reach * second
        return max(self.start, first), min(self.end, last)

    @property
    def dips(self) -> list[tuple[float, float]]:
        """Where a worn tape’s sound dips within the window, in frames."""
        first, last = self.window
        both = [*self.first.dips(self.start), *self.second.dips(self.cut)]
        return [dip for dip in both if dip[0] < last and dip[1] > first]

    @property
    def sides(self) -> tuple[TalkAtCut, TalkAtCut]:
        return self.first, self.second

    @property
    def sounds(self) -> dict[str, SourceSound]:
        return {side.tape: side.sound for side in self.sides}

    def document(self) -> Json:
        ends = [self.start] if self.assembled else [self.scene.length]
        if self.joint:
            ends = [self.cut, self.scene.length]
        begins = [0, *ends[:-1]]
        passes = zip(begins, ends, strict=True)
        return {
            "rate": self.scene.rate.label,
            **self.scene.figures(),
            "master": {
                "length": self.scene.length,
                "recorded": [
                    {"start": start, "end": end, "what": "black"} for start, end in passes
                ],
            },
            "sources": {side.tape: side.source() for side in self.sides},
            "edits": self._edits(),
        }

    def _edits(self) -> list[Json]:
        first = self._edit(self.first, self.start, assemble=self.assembled or self.wiping)
        second = self._edit(self.second, self.cut, assemble=self.assembled)
        return [second, first] if self.wiping else [first, second]

    def _edit(self, side: TalkAtCut, at: int, *, assemble: bool) -> Json:
        mode: Json = {"mode": "insert", "picture": True, "sound": True}
        points = {"in": side.in_, "out": side.out, "at": at}
        mode = {"mode": "assemble"} if assemble else mode
        return {**mode, "source": side.tape, **points, **side.machines}
