"""The sound across a cut in exact words: what is heard, never what it is called.

Every clip is told alike, fault or none, so that the order of sentences says nothing.
"""

from collections.abc import Iterator

from exercises.drills.kinds.spot_by_ear.faults import Heard, SoundStretch
from exercises.drills.kinds.spot_by_ear.talk import Talk, TalkAtCut
from exercises.drills.setting.phrases import listed
from exercises.tape import Bench, EditSession, Span, Tape
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.pauses import lifted

NEAR = 6  # frames from a cut within which a breath is told
CEILING = 30  # 0.1 dB over line-up: beyond it the tape rounds off what it is given


class Told:
    """What is heard of a talk on a tape, in sentences; `found` is the model's own account."""

    def __init__(
        self, talk: Talk, session: EditSession, tape: Tape, found: list[SoundStretch]
    ) -> None:
        self.talk = talk
        self.tape = tape
        self.bench: Bench = session.bench
        self.meter = RunMeter(session.bench)
        self.found = found

    def sentences(self) -> tuple[str, ...]:
        """Times are seconds from where the clip begins."""
        return tuple(self._all(self.talk.window[0]))

    def _all(self, start: int) -> Iterator[str]:
        talk = self.talk
        first, second = talk.sides
        yield f"The cut comes after {self._seconds(self.talk.cut - start)} seconds."
        yield f"Before it is heard: {self._spoken(first, talk.start)}"
        yield f"After it is heard: {self._spoken(second, talk.cut)}"
        yield f"At the cut: {breath(first, at_end=True)} before it, {breath(second)} after it."
        yield self._levels()
        yield self._pauses()
        yield self._over("The pitch wavers", "The pitch is steady throughout.", Heard.WAVERS, start)
        yield self._over(
            "Not even the room is heard", "The room is heard throughout.", Heard.HOLE, start
        )
        yield self._dips(start)

    def _spoken(self, side: TalkAtCut, at: int) -> str:
        """The words that are heard of a side laid at `at`, and how much of the one at the cut."""
        before, heard = at < self.talk.cut, list(self._heard(side, at - side.in_))
        if not heard:
            return "nothing said."
        said = " ".join(text for text, _ in heard)
        _, span = heard[-1 if before else 0]
        whole, part = span.end - span.start, min(span.end, side.out) - max(span.start, side.in_)
        much = "whole" if part == whole else f"for {part} of its {whole} frames"
        return f"“{said}”, the {'last' if before else 'first'} word {much}."

    def _heard(self, side: TalkAtCut, shift: int) -> Iterator[tuple[str, Span]]:
        """The words of a side that are heard, all or part of them, `shift` later on the master."""
        end = min(side.out, self.talk.window[1] - shift)
        for text, span in side.words:
            copied = side.in_ < span.end and span.start < end
            if copied and self._plays(span.start + shift, span.end + shift):
                yield text, span

    def _plays(self, start: int, end: int) -> bool:
        holes = (each for each in self.found if each.heard is Heard.HOLE)
        return not any(hole.start < end and start < hole.end for hole in holes)

    def _levels(self) -> str:
        levels = [self._level(at) for at in (self.talk.start, self.talk.cut)]
        before, after = ("no level" if each is None else over_line_up(each) for each in levels)
        edges = "rough" if max(filter(None, levels), default=0) > CEILING else "clean"
        return (
            f"On a meter, speech stands at {before} ahead of the cut and at {after} past it; "
            f"its loudest parts are {edges}."
        )

    def _level(self, frame: int) -> int | None:
        """Of speech, in tenths of a dB over line-up; None where none was laid."""
        run = self.tape.sound.at(frame)
        level = run and self.meter.sound(run.value)
        return None if level is None else round(level)

    def _pauses(self) -> str:
        """How loud the room is where nobody speaks."""
        noise = [
            pause.noise
            for run in self.tape.sound.laid
            if run.start >= self.talk.start
            and run.value.made.machines.sound.mode == "automatic"
            and (levels := self.meter.levels(run.value))
            for pause in lifted(run, levels, self.bench)
        ]
        if not noise:
            return "In the pauses the room stays as soft as it is."
        return f"In the pauses the room swells, up to {over_line_up(max(noise))}."

    def _over(self, what: str, otherwise: str, heard: Heard, start: int) -> str:
        spans = [
            f"from {self._seconds(each.start - start)} to {self._seconds(each.end - start)} seconds"
            for each in self.found
            if each.heard is heard
        ]
        return f"{what} {' and '.join(dict.fromkeys(spans))}." if spans else otherwise

    def _dips(self, start: int) -> str:
        at = listed([self._seconds(round(first) - start) for first, _ in self.talk.dips] or [""])
        return f"It dips for a moment at {at} seconds." if self.talk.dips else "It dips nowhere."

    def _seconds(self, frames: int) -> str:
        return f"{float(frames / self.bench.rate.fraction):.1f}"


def breath(side: TalkAtCut, *, at_end: bool = False) -> str:
    """Whether breath is drawn right beside the cut."""
    edge = side.out if at_end else side.in_
    for span in side.breaths:
        start, end = max(span.start, side.in_), min(span.end, side.out)
        away = edge - end if at_end else start - edge
        if start < end and 0 <= away <= NEAR:
            return f"a breath {away} frames" if away else "a breath right"
    return "no breath right"


def over_line_up(level: int) -> str:
    """A level in words.

    >>> over_line_up(-65), over_line_up(20)
    ('6.5 dB under line-up', '2 dB over line-up')
    """
    return f"{abs(level) / 10:g} dB {'under' if level < 0 else 'over'} line-up"
