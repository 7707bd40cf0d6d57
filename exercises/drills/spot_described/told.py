"""What went wrong and how it is mended, in sentences made from the tape model's own facts."""

from collections.abc import Iterator

from exercises.drills.change import Mode
from exercises.drills.outcome import NAMES
from exercises.drills.phrases import begun, code, length, listed, span
from exercises.drills.spot_described.case import Case, Step
from exercises.drills.spot_described.mends import Mend, least
from exercises.drills.spot_described.state import Fault, State, Stretch
from exercises.drills.wants import SIDES, Side, side
from exercises.tape import Rate, Tape


class Told:
    """A case in words."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.rate: Rate = case.bench.rate

    def happened(self) -> list[str]:
        """What is wrong with the film and what the edit did; or that nothing is wrong."""
        if self.case.fault is None:
            return list(self._well())
        (blamed,) = self.case.blamed
        seen = [self._seen(self.case.last, stretch) for stretch in self.case.faults]
        return [*seen, self._cause(blamed)]

    def mended(self, mode: Mode) -> str:
        """What a mend does: that it is enough, or what is still wrong after it."""
        mend = Mend(self.case, mode)
        if mend.start < 0:
            return "Nowhere before it are there pulses in phase for long enough to assemble from."
        left = mend.result().faults()
        if left:
            seen = self._seen(mend.result(), left[0])
            return f"{begun(NAMES[mode])} does not put it right. {seen}"
        what = f"{begun(NAMES[mode])} {self._span(mend.start, mend.end)}"
        if mode is not least(self.case):
            return f"{what} would do too, but it lays again what is not wrong."
        if mode is not Mode.ASSEMBLE:
            return f"{what} puts it right: the pulses run on there, and all else stays as it is."
        ready = self._long(self.case.last.tape.run_up(mend.start))
        return (
            f"{what} puts it right: {ready} of pulses in phase come before it. "
            "All of the film from there on is laid again."
        )

    def _span(self, start: int, end: int) -> str:
        return f"{span(start, end, self.case.bench)} ({length(end - start, self.rate)})"

    def _code(self, frame: int) -> str:
        return code(frame, self.case.bench)

    def _long(self, frames: int) -> str:
        return length(frames, self.rate)

    def _well(self) -> Iterator[str]:
        last = self.case.last
        yield f"The film plays as it was meant, {self._span(last.start, last.end)}."
        if last.tape.control.at(last.end) is None:
            yield f"What is seen after {self._code(last.end)} comes after the film: no fault."

    def _seen(self, state: State, stretch: Stretch) -> str:
        where = begun(self._span(stretch.start, stretch.end))
        match stretch.fault:
            case Fault.NO_PULSES:
                return f"{where} there are no pulses: nothing plays."
            case Fault.ROLL:
                return f"{where} the pulses have only just begun anew: the picture rolls."
            case Fault.BLANK:
                return f"{where} there are pulses, but no {listed(blank(state.tape, stretch))}."
            case Fault.UNSETTLED:
                tracks = unsettled(state.tape, stretch)
                return f"{where} the {listed(tracks)} {_was(tracks)} not steady when copied."
        return f"{where} the {listed(stretch.tracks)} that was to stay is recorded over."

    def _cause(self, index: int) -> str:
        """What the edit did, for the worst fault."""
        step, edit = self.case.steps[index], f"Edit {index + 1}"
        before = self.case.all_states[index - 1].tape if index else self.case.master
        match self.case.fault:
            case Fault.NO_PULSES:
                return self._without_pulses(step, edit)
            case Fault.ROLL:
                return self._jumping(step, edit, before)
            case Fault.UNSETTLED:
                return self._unlocked(step, edit, before)
            case Fault.BLANK:
                return self._past_the_take(step, edit)
        return (
            f"{edit} recorded {listed(step.mode.tracks)}, "
            f"and only the {listed(step.change.tracks)} was meant."
        )

    def _without_pulses(self, step: Step, edit: str) -> str:
        change, start = step.change, self.case.start
        if step.mode is not Mode.ASSEMBLE:
            return f"{edit} is an insert: it lays no pulses, and the tape had none there."
        if start < change.at:
            return (
                f"{edit} begins at {self._code(change.at)}, but what comes before it ends at "
                f"{self._code(start)}. An assemble fills no hole before it."
            )
        wiped = self._long(self.case.bench.erase_gap)
        return (
            f"{edit} is an assemble. Past its end, {self._code(change.end)}, it wiped {wiped} of "
            "the film; the old pulses beyond are out of phase with its own."
        )

    def _jumping(self, step: Step, edit: str, before: Tape) -> str:
        if step.mode is not Mode.ASSEMBLE:
            return (
                f"{edit} is an insert across the place where the pulses begin anew. "
                "An insert leaves the pulses as they are."
            )
        ready, end = before.run_up(step.change.at), self._code(step.change.end)
        if ready >= self.case.bench.lock:
            return f"{edit} is an assemble. Past its end, {end}, the old pulses are out of phase."
        return (
            f"{edit} is an assemble with {self._long(ready)} of pulses in "
            f"phase before it. A machine needs {self._long(self.case.bench.lock)}; so its pulses "
            "begin anew instead of running on."
        )

    def _unlocked(self, step: Step, edit: str, before: Tape) -> str:
        change, lock = step.change, self.case.bench.lock
        needs = self._long(lock)
        if change.source.run_up(change.in_) < lock:
            ready = self._long(change.source.run_up(change.in_))
            return f"{edit} begins {ready} after the start of its take; the player needs {needs}."
        if before.run_up(change.at) < lock:
            ready = self._long(before.run_up(change.at))
            return (
                f"Before {edit.lower()} the edit master has {ready} of pulses in phase; "
                f"the recorder needs {needs}."
            )
        relock = self._long(self.case.bench.relock)
        return (
            f"Within {edit.lower()} one take gives way to another. There the player loses lock, "
            f"and takes {relock} to find it again."
        )

    def _past_the_take(self, step: Step, edit: str) -> str:
        source, out = step.change.source, step.change.out
        ends = max(take.end for take in source.takes if take.end < out)
        return (
            f"The take ends at {self._code(ends)} on {source.name}, before {edit.lower()} does. "
            "From there on the player gave nothing to record."
        )


def blank(tape: Tape, stretch: Stretch) -> list[Side]:
    """Which tracks hold nothing where the stretch begins."""
    return [track for track in SIDES if side(tape, track).at(stretch.start) is None]


def unsettled(tape: Tape, stretch: Stretch) -> list[Side]:
    """Which tracks hold an unsettled copy where the stretch begins."""
    runs = {track: side(tape, track).at(stretch.start) for track in SIDES}
    return [track for track, run in runs.items() if run and not run.value.settled]


def _was(tracks: list[Side]) -> str:
    return "was" if len(tracks) == 1 else "were"
