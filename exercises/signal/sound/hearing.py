"""What is heard when a tape is played."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Self

import numpy as np

from exercises.signal.sound.hiss import hissing
from exercises.signal.sound.run_heard import RunHeard, silence
from exercises.signal.sound.samples import Samples, sample_at
from exercises.signal.sound.soundtrack import SILENT, Soundtrack
from exercises.signal.sound.splice import RAMP, butted
from exercises.signal.sound.wow import Unsteady
from exercises.tape.bench import Bench
from exercises.tape.faults.meter import RunMeter
from exercises.tape.playback import Condition, PlaybackState, track_states
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.track import Laid
from exercises.tape.unpulsed import unpulsed

AROUND = 3  # s
MASTER_HISS = 1  # its seed


@dataclass(frozen=True, slots=True)
class Hearing:
    """``[start, end)`` frames of a tape, played on its bench.

    ``soundtracks`` has what is heard of each source; one that has no levels, as black,
    needs none. Memory does not grow with the length.
    """

    tape: Tape
    bench: Bench
    soundtracks: Mapping[str, Soundtrack]
    start: int
    end: int

    def __post_init__(self) -> None:
        if not 0 <= self.start < self.end <= self.tape.length:
            raise ValueError(f"Frames {self.start} to {self.end} are not on the tape.")

    @classmethod
    def around(
        cls, tape: Tape, bench: Bench, soundtracks: Mapping[str, Soundtrack], frame: int
    ) -> Self:
        """What is heard around a frame of the tape, as an edit point: AROUND on either side."""
        reach = round(AROUND * bench.rate.fraction)
        first, last = max(0, frame - reach), min(tape.length, frame + reach)
        return cls(tape, bench, soundtracks, first, last)

    @property
    def length(self) -> int:
        """In samples."""
        rate = self.bench.rate
        return sample_at(self.end, rate) - sample_at(self.start, rate)

    def stream(self) -> Iterator[Samples]:
        """What is heard, in pieces."""
        control = [
            state
            for state in track_states(self.tape, self.bench)[0]
            if state.start < self.end and state.end > self.start
        ]
        at = sample_at(self.start, self.bench.rate)
        for piece in butted(self._stretches(self._unsteady(control))):
            hiss = hissing(at, len(piece), recordings=1, seed=MASTER_HISS)
            yield (piece + hiss) * self._plays(control, at, len(piece))
            at += len(piece)

    def samples(self) -> Samples:
        return np.concatenate(list(self.stream()))

    def _stretches(self, unsteady: tuple[Unsteady, ...]) -> Iterator[Iterator[Samples]]:
        """Each run and each blank, longer by the ramp of the cut at its end."""
        meter, reached = RunMeter(self.bench), self.start
        for run in self.tape.sound.laid.between(self.start, self.end):
            start, end = max(run.start, self.start), min(run.end, self.end)
            if reached < start:
                yield silence(self._count(reached, start) + RAMP)
            heard = self._heard(run, meter, unsteady)
            rate = self.bench.rate
            yield heard.between(sample_at(start, rate), sample_at(end, rate) + RAMP)
            reached = end
        if reached < self.end:
            yield silence(self._count(reached, self.end) + RAMP)

    def _heard(self, run: Run[Laid], meter: RunMeter, unsteady: tuple[Unsteady, ...]) -> RunHeard:
        levels = meter.levels(run.value)
        soundtrack = SILENT if levels is None else self.soundtracks[run.value.source]
        return RunHeard(run, levels, soundtrack, self.bench, unsteady)

    def _count(self, start: int, end: int) -> int:
        return sample_at(end, self.bench.rate) - sample_at(start, self.bench.rate)

    def _unsteady(self, control: list[PlaybackState]) -> tuple[Unsteady, ...]:
        rate = self.bench.rate
        return tuple(
            Unsteady(
                sample_at(state.start, rate),
                sample_at(state.end, rate),
                settles=state.state is Condition.RELOCK,
            )
            for state in control
            if state.state is not Condition.CLEAN
        )

    def _plays(self, control: list[PlaybackState], at: int, count: int) -> Samples:
        """0 where the machine mutes: on blank tape. Sound without pulses is heard, unsteadily."""
        plays = np.ones(count, np.float32)
        for state in control:
            if state.state is Condition.NO_CONTROL:
                self._mute(plays, state, at)
        return plays

    def _mute(self, plays: Samples, state: PlaybackState, at: int) -> None:
        for piece in unpulsed(self.tape, state.start, state.end):
            if not piece.recorded:
                first, last = (sample_at(each, self.bench.rate) - at for each in piece[:2])
                plays[max(0, first) : max(0, last)] = 0
