from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.beliefs.trial import Trial
from exercises.drills.setting.change import Mode
from exercises.tape import Bench, Tape


def never(_: Trial) -> bool:
    return False


def always(_: Trial) -> bool:
    return True


def as_it_is(trial: Trial) -> Trial:
    return trial


def nothing(_: Trial) -> int:
    return 0


def over_blank_tape(trial: Trial) -> bool:
    """Whether the recorder runs up over tape without pulses."""
    return trial.change.at > 0 and trial.master.control.at(trial.change.at - 1) is None


@dataclass(frozen=True, slots=True)
class Belief:
    """An altered rule of recording or of playing; `modes` are those that it concerns.

    `taken` gives the attempt as they take it to be. `before` gets the tape so far; `after`
    gets the tape as it was recorded on and as it was left. `player_locked` and
    `recorder_locked` say when a machine is expected to be locked whatever its run-up, and
    `made_up` how many frames of run-up either is thought to have beside those on its tape.
    `played` gets the tape when it is played.
    """

    id: str
    modes: tuple[Mode, ...]
    taken: Callable[[Trial], Trial] = as_it_is
    before: Callable[[Trial, Tape], Tape] = lambda _attempt, tape: tape
    after: Callable[[Trial, Tape, Tape], Tape] = lambda _attempt, _before, tape: tape
    player_locked: Callable[[Trial], bool] = never
    recorder_locked: Callable[[Trial], bool] = never
    made_up: Callable[[Trial], int] = nothing
    played: Callable[[Tape, Bench], Tape] | None = None
