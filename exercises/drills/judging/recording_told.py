"""What a recording does to a tape, in sentences made from the tape model's own facts."""

from collections.abc import Iterable, Iterator

from exercises.drills.beliefs import Trial, recorded
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import code, length, listed, span
from exercises.tape.explaining import Account, Harm, harms
from exercises.tape.judging import Demand, Trouble, misses


class RecordingTold:
    """One attempt, what came of it, and the words for that."""

    def __init__(self, trial: Trial, wants: Iterable[Demand]) -> None:
        self.trial = trial
        self.tape = recorded(trial)
        self.account = Account(trial.master, trial.edit, trial.bench)
        laid = [want for want in wants if not want.new or want.track in trial.mode.tracks]
        self.unrecorded = [track for track in trial.change.tracks if track not in trial.mode.tracks]
        self.harms = tuple(harms(misses(laid, self.tape, trial.bench)))

    def told(self) -> list[str]:
        """What it records, then what is wrong with that; or that all is well."""
        right = "All that is wanted plays cleanly, and all that must stay is untouched."
        return [*self._recorded(), *(list(self.wrong()) or [right])]

    def wrong(self) -> Iterator[str]:
        """What is wrong with it, the plainest thing first."""
        if self.unrecorded:
            yield f"The new {listed(self.unrecorded)} is not recorded."
        for harm in self.harms:
            yield self._told(harm)

    def _span(self, start: int, end: int) -> str:
        return span(start, end, self.trial.bench)

    def _long(self, frames: int) -> str:
        return length(frames, self.trial.bench.rate)

    def _code(self, frame: int) -> str:
        return code(frame, self.trial.bench)

    def _recorded(self) -> Iterator[str]:
        change, mode = self.trial.change, self.trial.mode
        where = self._span(change.at, change.end)
        if mode is not Mode.ASSEMBLE:
            yield f"{mode.words} records {listed(mode.tracks)} {where}."
            yield f"It leaves the {listed([*self.account.left, 'pulses'])} as they are."
            return
        yield f"Assemble records picture, sound and pulses {where}."
        if self.account.in_phase:
            yield "Its pulses run on in phase from those before."
        start, end = self.account.wiped
        if start < end:
            until = self._code(end)
            yield f"Past its end it wipes {self._long(end - start)} of tape, as far as {until}."

    def _told(self, harm: Harm) -> str:
        if harm.moved:
            return self._told_moved()
        return self._told_new(harm) if harm.new else self._told_kept(harm)

    def _told_moved(self) -> str:
        change = self.trial.change
        return (
            f"Nothing moves along: what lay from {self._code(change.at)} on stays where it was, "
            f"and the new shot is recorded over {self._long(change.end - change.at)} of it."
        )

    def _told_new(self, harm: Harm) -> str:
        what, where = listed(harm.tracks), self._span(harm.start, harm.end)
        match harm.trouble:
            case Trouble.NO_PULSES:
                return f"There are no pulses {where}: nothing locks to the new {what} there."
            case Trouble.ROLL:
                begins = self._code(harm.start)
                return f"The pulses begin anew at {begins}: what is new is unsteady {where}."
            case Trouble.UNSETTLED:
                are = "is" if len(harm.tracks) == 1 else "are"
                return f"The new {what} {are} unsteady {where}: {self._unlocked()}."
            case Trouble.CUT:
                return (
                    f"It makes a plain cut at {self._code(harm.start)}: one player gives one "
                    "picture, and there is nothing to mix it with."
                )
        return f"The new {what} is not there {where}."

    def _unlocked(self) -> str:
        """Why the machines were not locked when the copy began."""
        lock = self.trial.bench.lock
        short = [
            f"{'the take' if each.source else 'the edit master'} has "
            f"{self._long(each.frames) if each.frames else 'none'}"
            for each in self.account.short
        ]
        return f"of the {self._long(lock)} of run-up before the edit in, {listed(short)}"

    def _told_kept(self, harm: Harm) -> str:
        what, where = listed(harm.tracks), self._span(harm.start, harm.end)
        was, is_ = ("was", "is") if len(harm.tracks) == 1 else ("were", "are")
        match harm.trouble:
            case Trouble.ROLL:
                return f"There the old pulses go on, out of phase: the picture rolls {where}."
            case Trouble.OTHER:
                return f"The {what} that {was} to stay {is_} recorded over {where}."
        return f"The {what} that {was} to stay {is_} wiped {where}."
