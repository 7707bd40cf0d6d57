"""What can be done about a fault, each tried in the tape model."""

from collections.abc import Collection
from functools import cached_property

from exercises.drills.beliefs import Trial, as_played, recorded
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase, as_meant
from exercises.drills.kinds.spot_the_bad_edit.state import FilmSoFar
from exercises.drills.setting.change import BY_WORK, Change, Mode
from exercises.tape import Source, Take, Tape

AGAIN = "laid again"


class Mend:
    """One recording that may put a case right: what was meant, from takes with enough run-up.

    An insert covers the stretch that is wrong. An assemble begins at the last place before
    it with pulses in phase for as long as a machine needs, and goes on to the film's end.
    """

    def __init__(self, case: EditsCase, mode: Mode) -> None:
        self.case, self.mode = case, mode
        self.start = case.start
        self.end = case.end
        if mode is Mode.ASSEMBLE:
            self.start = ready_before(case.last.tape, case.start, case.bench.lock)
            self.end = case.last.end

    @cached_property
    def trial(self) -> Trial:
        lock, frames = self.case.bench.lock, self.end - self.start
        source = Source(AGAIN, (Take(0, 2 * lock + frames),))
        change = Change(
            source=source, in_=lock, out=lock + frames, at=self.start, tracks=self.mode.tracks
        )
        return Trial(self.case.last.tape, change, self.mode, self.case.bench)

    def result(self, beliefs: Collection[str] = ()) -> FilmSoFar:
        """The master after it, next to the film as it is meant then."""
        trial, last = self.trial, self.case.last
        return FilmSoFar(
            as_played(recorded(trial, beliefs), last.bench, beliefs),
            as_meant(last.meant, trial.change),
            last.bench,
            min(last.start, self.start),
            last.end,
            self.case.worn,
        )

    def works(self, beliefs: Collection[str] = ()) -> bool:
        return 0 <= self.start < self.end and self.result(beliefs).plays_as_meant()

    def ends_inside_a_shot(self) -> bool:
        """Whether a shot of the film goes on where it ends."""
        last = self.case.last
        played, meant = (
            [tape.on(track) for track in self.mode.tracks] for tape in (last.tape, last.meant)
        )
        return any(track.runs_across(self.end) for track in (*played, *meant))


def ready_before(tape: Tape, frame: int, lock: int) -> int:
    """The last frame up to `frame` with pulses in phase before it for `lock`; -1: there is none."""
    for run in reversed(tape.control.runs):
        last = min(run.end, frame)
        if last - run.start >= lock:
            return last
    return -1


def least(case: EditsCase) -> Mode | None:
    """The mode of the least recording that puts the case right; None where no one does."""
    return next((mode for mode in BY_WORK if Mend(case, mode).works()), None)
