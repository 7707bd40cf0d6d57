"""What is heard of a stretch of tape, in sentences that hold for that very stretch."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from exercises.drills.kinds.spot_by_ear.described import over_line_up
from exercises.drills.media.medium import SourceSound
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import Reel, reel
from exercises.tape import Condition, EditSession, Laid, PlaybackState, Run, Tape
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.pauses import lifted
from exercises.tape.machines import SoundMode
from exercises.tape.playback import track_states

WAVERS = (Condition.RELOCK, Condition.UNSETTLED_SOUND)
SILENT = (Condition.NO_SOUND,)


def reel_of(sound: SourceSound) -> Reel:
    return reel(*sound.lines, begin=sound.begin, pause=sound.pause)


@dataclass(frozen=True)
class HeardStretch:
    """`[start, end)` of the edit master of a session, played; `sounds` by source."""

    session: EditSession
    sounds: Mapping[str, SourceSound]
    start: int
    end: int

    def sentences(self) -> Iterator[str]:
        tape, meter = self.session.recorded(), RunMeter(self.session.bench)
        yield f"{self._seconds(self.end)} seconds of sound."
        for run in tape.sound.laid.between(self.start, self.end):
            if meter.levels(run.value) is not None:
                yield from self._run(run, meter)
        yield from self._states(tape)

    def _run(self, run: Run[Laid], meter: RunMeter) -> Iterator[str]:
        said = self.words(run)
        when = f"From {self._seconds(max(run.start, self.start))} seconds on"
        level = meter.sound(run.value)
        if not said or level is None:
            yield f"{when}: the room, and nobody speaks."
            return
        yield f"{when}, {self._speaker(run)} says: “{said}”"
        yield f"The loudest words stand {over_line_up(round(level))}.".replace("0 dB over", "at")
        if run.value.made.machines.sound.mode is SoundMode.AUTOMATIC:
            yield self._pauses(run, meter)

    def words(self, run: Run[Laid]) -> str:
        """Those words of a run that are heard, whole or in part."""
        shift, first, last = self._place(run)
        said = reel_of(self.sounds[run.value.source])
        spans = said.marks(self.session.bench.rate).words
        return " ".join(
            word.text
            for word, span in zip(said.words, spans, strict=True)
            if span.start + shift < last and span.end + shift > first
        )

    def loudest_pause(self, run: Run[Laid], meter: RunMeter) -> int | None:
        """The noise at the end of the noisiest pause, in tenths of a dB over line-up."""
        levels = meter.levels(run.value)
        if levels is None:
            return None
        shift, first, last = self._place(run)
        pauses = lifted(run, levels, self.session.bench)
        heard = (each for each in pauses if each.start + shift < last and each.end + shift > first)
        return max((pause.noise for pause in heard), default=None)

    def noisiest(self) -> int | None:
        """The same over all that is heard under automatic gain; None where no pause swells."""
        meter = RunMeter(self.session.bench)
        runs = self.session.recorded().sound.laid.between(self.start, self.end)
        automatic = (
            run for run in runs if run.value.made.machines.sound.mode is SoundMode.AUTOMATIC
        )
        found = (self.loudest_pause(run, meter) for run in automatic)
        return max((noise for noise in found if noise is not None), default=None)

    def _pauses(self, run: Run[Laid], meter: RunMeter) -> str:
        noise = self.loudest_pause(run, meter)
        if noise is None:
            return "In the pauses the room stays soft."
        return f"In the pauses the room swells, up to {over_line_up(noise)}."

    def _place(self, run: Run[Laid]) -> tuple[int, int, int]:
        """From the source's frames to the master's, and what is heard of the run."""
        return run.start - run.value.frame, max(run.start, self.start), min(run.end, self.end)

    def _speaker(self, run: Run[Laid]) -> str:
        return f"the {lines()[self.sounds[run.value.source].lines[0]].speaker}"

    def _states(self, tape: Tape) -> Iterator[str]:
        control, _, sound = track_states(tape, self.session.bench)
        within = [
            PlaybackState(
                max(each.start, self.start), min(each.end, self.end), each.state, each.edit
            )
            for each in (*self._drifting(tape, control), *sound)
            if each.start < self.end and each.end > self.start
        ]
        for states, what in ((WAVERS, "The pitch wavers"), (SILENT, "Nothing is heard")):
            for each in within:
                if each.state in states:
                    times = f"{self._seconds(each.start)} to {self._seconds(each.end)}"
                    yield f"{what} from {times} seconds."

    def _drifting(self, tape: Tape, control: Iterable[PlaybackState]) -> Iterator[PlaybackState]:
        """Where the machine is not locked: without pulses, only where a sound lies."""
        for state in control:
            if state.state is Condition.NO_CONTROL:
                for run in tape.sound.laid.between(state.start, state.end):
                    first, last = max(run.start, state.start), min(run.end, state.end)
                    yield PlaybackState(first, last, Condition.UNSETTLED_SOUND, state.edit)
            else:
                yield state

    def _seconds(self, frame: int) -> str:
        return f"{float((frame - self.start) / self.session.bench.rate.fraction):.1f}"
