"""Edits that were laid where pulses were missing, or took them away."""

from collections.abc import Sequence

from exercises.drills.setting.phrases import code, length
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.blame import hole_before
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.proceedings import Proceedings

Parts = Sequence[Finding]


def wiped(made: EditMade, parts: Parts, run: Proceedings) -> str:
    if not run.bench.erase_gap:
        return "laid pulses that are out of phase with those past its end"
    return f"wiped {length(run.bench.erase_gap, run.bench.rate)} of tape past its end"


def no_pulses(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return f"met no pulses from {code(made.account.bare[0][0], run.bench)} on, and laid none"


def hole(made: EditMade, parts: Parts, run: Proceedings) -> str:
    gap = length(hole_before(made), run.bench.rate)
    return f"begins {gap} behind where the pulses before it had ended"


def source_run_up(made: EditMade, parts: Parts, run: Proceedings) -> str:
    in_, source = made.edit.in_, made.edit.source
    return (
        f"has its source in at {code(in_, run.bench)} of {source.name}, and before that the take "
        f"has {_run_up(source.run_up(in_), run)}"
    )


def master_run_up(made: EditMade, parts: Parts, run: Proceedings) -> str:
    at = made.edit.at
    has = _run_up(made.before.run_up(at), run)
    return f"begins at {code(at, run.bench)} of the master, and before that the master has {has}"


def _run_up(frames: int, run: Proceedings) -> str:
    has = f"{length(frames, run.bench.rate)} of run-up" if frames else "no run-up"
    return f"{has}, where {length(run.bench.lock, run.bench.rate)} are needed"


def new_take(made: EditMade, parts: Parts, run: Proceedings) -> str:
    take = next(made.account.new_takes, None)
    where = f" at {code(take.start, run.bench)}" if take else ""
    return f"ran across the beginning of another take of {made.edit.source.name}{where}"
