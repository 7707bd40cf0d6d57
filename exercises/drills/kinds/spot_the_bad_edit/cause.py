"""Why the worst fault of a film is there: what the edit to blame did, and the rule it broke."""

from typing import NamedTuple

from exercises.drills.judging.rule import Rule
from exercises.drills.judging.rules import (
    ENDS,
    NO_GAP,
    NO_PULSES,
    ONE_PHASE,
    ONE_TAKE,
    ONE_TRACK,
    RUN_UP,
    WORN_MASTER,
    WORN_SOURCE,
)
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.state import FaultyStretch, FilmFault
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import code, length, listed, span
from exercises.tape import Tape
from exercises.tape.explaining import Account


class EditCause(NamedTuple):
    sentence: str
    rule: Rule


def cause_of(case: EditsCase) -> EditCause | None:
    """None where nothing is wrong, and where no one edit can truly be blamed for the worst of it.

    That is so where several edits are, and where the fault lies on tape that the edit left alone:
    then it was there before, and came into view as the film grew.
    """
    if case.is_worn:
        return worn_out(case)
    if len(case.blamed) != 1:
        return None
    (index,) = case.blamed
    worst = next(stretch for stretch in case.faults if stretch.fault is case.fault)
    return Blame(case, index, worst).cause()


def worn_out(case: EditsCase) -> EditCause:
    """No edit did it: one of the tapes is worn."""
    (worn,) = case.worn
    where = f"{span(worn.start, worn.end, case.bench)}"
    if case.is_master_worn:
        sentence = f"The edit master is worn {where}: whatever is laid there drops out."
        return EditCause(f"{sentence} No edit did it.", WORN_MASTER)
    sentence = f"{worn.tape} is worn {where}, and drops out there whenever it is played."
    return EditCause(f"{sentence} No edit did it.", WORN_SOURCE)


class Blame:
    """A stretch that is wrong, and the edit, by index, after which it first was."""

    def __init__(self, case: EditsCase, index: int, worst: FaultyStretch) -> None:
        self.case, self.worst, self.bench = case, worst, case.bench
        self.step = case.steps[index]
        self.change = self.step.change
        self.edit = f"Edit {index + 1}"
        self.before: Tape = case.all_states[index - 1].tape if index else case.master
        self.account = Account(self.before, self.change.edit(self.step.mode), case.bench)

    def cause(self) -> EditCause | None:
        inserted = self.step.mode is not Mode.ASSEMBLE
        match self.worst.fault:
            case FilmFault.NO_PULSES:
                return self._insert_without_pulses() if inserted else self._assemble_beside_none()
            case FilmFault.ROLL:
                return self._insert_across() if inserted else self._assemble_out_of_phase()
            case FilmFault.UNSETTLED:
                return self._unlocked() if self._begins_inside() else None
            case FilmFault.BLANK:
                return self._past_the_take()
        return self._recorded_over()

    def _begins_inside(self) -> bool:
        return self.change.at <= self.worst.start < self.change.end

    def _insert_without_pulses(self) -> EditCause | None:
        if self.worst.end <= self.change.at or self.change.end <= self.worst.start:
            return None
        sentence = f"{self.edit} is an insert: it lays no pulses, and the tape had none there."
        return EditCause(sentence, NO_PULSES)

    def _assemble_beside_none(self) -> EditCause | None:
        change, start = self.change, self.worst.start
        if self.worst.end == change.at:
            return EditCause(
                f"{self.edit} begins at {self._code(change.at)}, but what comes before it ends at "
                f"{self._code(start)}. An assemble fills no hole before it.",
                NO_GAP,
            )
        if start != change.end or not self.bench.erase_gap or not self.before.control.at(start):
            return None
        gap = self.bench.erase_gap
        sentence = (
            f"{self.edit} is an assemble. Past its end, {self._code(change.end)}, it wiped "
            f"{self._long(gap)} of the film"
        )
        if self.before.control.at(start + gap):
            sentence += "; the old pulses beyond are out of phase with its own"
        return EditCause(f"{sentence}.", ENDS)

    def _insert_across(self) -> EditCause | None:
        if not self._begins_inside():
            return None
        return EditCause(
            f"{self.edit} is an insert across the place where the pulses begin anew. "
            "An insert leaves the pulses as they are.",
            ONE_PHASE,
        )

    def _assemble_out_of_phase(self) -> EditCause | None:
        change, end = self.change, self._code(self.change.end)
        if self.worst.start == change.at and not self.account.in_phase:
            ready = self._long(self.before.run_up(change.at))
            return EditCause(
                f"{self.edit} is an assemble with {ready} of pulses in phase before it. "
                f"A machine needs {self._long(self.bench.lock)}; so its pulses "
                "begin anew instead of running on.",
                RUN_UP,
            )
        if self.worst.start != change.end:
            return None
        return EditCause(
            f"{self.edit} is an assemble. Past its end, {end}, the old pulses are out of phase.",
            ENDS,
        )

    def _unlocked(self) -> EditCause | None:
        needs = self._long(self.bench.lock)
        for short in self.account.short:
            ready = self._long(short.frames)
            if short.source is None:
                return EditCause(
                    f"Before {self.edit.lower()} the edit master has {ready} of pulses in phase; "
                    f"the recorder needs {needs}.",
                    RUN_UP,
                )
            return EditCause(
                f"{self.edit} begins {ready} after the start of its take; "
                f"the player needs {needs}.",
                RUN_UP,
            )
        if not any(self.account.new_takes):
            return None
        return EditCause(
            f"Within {self.edit.lower()} one take gives way to another. There the player loses "
            f"lock, and takes {self._long(self.bench.relock)} to find it again.",
            ONE_TAKE,
        )

    def _past_the_take(self) -> EditCause | None:
        change = self.change
        take = change.source.take_at(change.in_)
        if not take or not self._begins_inside():
            return None
        if self.worst.start < change.at + take.end - change.in_:
            return None
        return EditCause(
            f"The take ends at {self._code(take.end)} on {change.source.name}, before "
            f"{self.edit.lower()} does. From there on the player gave nothing to record.",
            ONE_TAKE,
        )

    def _recorded_over(self) -> EditCause | None:
        laid, meant = self.step.mode.tracks, self.change.tracks
        if not self._begins_inside() or not set(self.worst.tracks) <= set(laid) - set(meant):
            return None
        sentence = f"{self.edit} recorded {listed(laid)}, and only the {listed(meant)} was meant."
        return EditCause(sentence, ONE_TRACK)

    def _code(self, frame: int) -> str:
        return code(frame, self.bench)

    def _long(self, frames: int) -> str:
        return length(frames, self.bench.rate)
