"""Words cut off at an edit point, and breaths left there.

Only where the sound is really cut: not where it continues its neighbour.
"""

from bisect import bisect_left
from collections.abc import Iterator
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.faults.blame import cutter
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit
from exercises.tape.faults.severity import graded
from exercises.tape.faults.stretches import UncutStretch, stretches
from exercises.tape.marks import Marks, Span
from exercises.tape.tape import Tape

# So many frames more of a word lost, or of a breath left, are one grade lower.
WORD_STEP, BREATH_STEP = 2, 4


class SoundEnd(NamedTuple):
    """An end of a stretch of sound: the frame of the source there, or the first left out."""

    frame: int
    starts: bool
    marks: Marks
    stretch: UncutStretch

    def heard(self, frames: int) -> tuple[int, int]:
        """So many frames next to the point, as they lie on the master."""
        start, end = self.stretch.start, self.stretch.end
        return (start, min(start + frames, end)) if self.starts else (max(end - frames, start), end)

    @property
    def at(self) -> int:
        return self.stretch.start if self.starts else self.stretch.end


def cut_words(tape: Tape, bench: Bench) -> Iterator[Fault]:
    """Edit points inside a word, measured by the frames of it that are lost."""
    limit = bench.limits.clipped_word
    for point in _points(tape):
        word = _begun(point.marks.words, point.frame)
        if word is None or word.end <= point.frame:
            continue
        before, after = point.frame - word.start, word.end - point.frame
        lost, kept = (before, after) if point.starts else (after, before)
        if lost > limit:
            yield Fault(
                FaultKind.CLIPPED_WORD,
                "sound",
                *point.heard(kept),
                graded(lost - limit - 1, WORD_STEP),
                cutter(tape.sound, point.at),
                Measured(lost, Unit.FRAMES, limit),
            )


def stray_breaths(tape: Tape, bench: Bench) -> Iterator[Fault]:
    """Breaths heard right at an edit point, measured by the frames that are heard."""
    limit = bench.limits.stray_breath
    for point in _points(tape):
        breath = _begun(point.marks.breaths, point.frame + point.starts)
        if breath is None:
            continue
        if point.starts:
            heard = breath.end - point.frame
        else:
            heard = point.frame - breath.start if breath.end >= point.frame else 0
        if heard > limit:
            yield Fault(
                FaultKind.STRAY_BREATH,
                "sound",
                *point.heard(heard),
                graded(heard - limit - 1, BREATH_STEP),
                cutter(tape.sound, point.at),
                Measured(heard, Unit.FRAMES, limit),
            )


def _points(tape: Tape) -> Iterator[SoundEnd]:
    for stretch in stretches(tape.sound.laid):
        first, last = stretch.first.value, stretch.last
        yield SoundEnd(first.frame, True, first.made.carried.marks, stretch)
        out = last.value.frame + last.end - last.start
        yield SoundEnd(out, False, last.value.made.carried.marks, stretch)


def _begun(spans: tuple[Span, ...], frame: int) -> Span | None:
    """The last span that begins before this frame."""
    index = bisect_left(spans, (frame,)) - 1
    return spans[index] if index >= 0 else None
