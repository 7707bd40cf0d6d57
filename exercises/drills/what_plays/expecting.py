"""A recording as a believer expects it, told so exactly that the tape can be played on paper."""

from collections.abc import Collection

from exercises.drills.beliefs import BELIEFS, Attempt, recorded
from exercises.drills.change import Mode
from exercises.drills.tracks import in_phase, with_runs
from exercises.tape import Tape
from exercises.tape.recording import copied

NO_MASTER, NO_SOURCE = "no-master-run-up", "no-source-run-up"
WITHOUT, PICKS = "plays-without-pulses", "assemble-picks-tracks"

# A sound insert where there are no pulses says no more of this one than of those who expect
# any insert to lay pulses.
ASKED = tuple(belief for belief in BELIEFS if belief != "sound-needs-no-pulses")


def expected(attempt: Attempt, beliefs: Collection[str]) -> Tape:
    """The edit master after one edit.

    `plays-without-pulses` changes nothing here: it is a rule of playing back.
    """
    rules = [belief for belief in beliefs if belief not in (NO_MASTER, WITHOUT)]
    tape = recorded(attempt, rules)
    short = attempt.master.run_up(attempt.change.at) < attempt.bench.lock
    return _settled(attempt, tape, beliefs) if NO_MASTER in beliefs and short else tape


def _settled(attempt: Attempt, tape: Tape, beliefs: Collection[str]) -> Tape:
    """The copy as steady as the player gives it, its pulses running on from any before them.

    Unlike `beliefs.master_run_up` this lays nothing ahead of the edit.
    """
    edit, bench = attempt.edit, attempt.bench
    missing = 0 if NO_SOURCE in beliefs else max(0, bench.lock - edit.source.run_up(edit.in_))
    picked = PICKS in beliefs and attempt.mode is Mode.ASSEMBLE
    tracks = attempt.change.tracks if picked else attempt.mode.tracks
    laid = list(copied(edit, unsettled=missing, relock=bench.relock))
    tape = with_runs(tape, tracks, edit.at, edit.end, laid)
    before, new = attempt.master.control.at(edit.at - 1), tape.control.at(edit.at)
    if attempt.mode is Mode.ASSEMBLE and before and new:
        return in_phase(tape, before.start, new.end)
    return tape
