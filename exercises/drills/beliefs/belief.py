from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.beliefs.attempt import Attempt
from exercises.drills.change import Mode
from exercises.tape import Bench, Tape


def never(_: Attempt) -> bool:
    return False


def always(_: Attempt) -> bool:
    return True


def over_blank_tape(attempt: Attempt) -> bool:
    """Whether the recorder runs up over tape without pulses."""
    return attempt.change.at > 0 and attempt.master.control.at(attempt.change.at - 1) is None


@dataclass(frozen=True, slots=True)
class Belief:
    """An altered rule of recording or of playing; `modes` are those that it concerns.

    `before` gets the tape so far; `after` gets the tape as it was recorded on and as it
    was left. `player_locked` and `recorder_locked` say when a machine is expected to be
    locked whatever its run-up. `played` gets the tape when it is played.
    """

    id: str
    modes: tuple[Mode, ...]
    before: Callable[[Attempt, Tape], Tape] = lambda _attempt, tape: tape
    after: Callable[[Attempt, Tape, Tape], Tape] = lambda _attempt, _before, tape: tape
    player_locked: Callable[[Attempt], bool] = never
    recorder_locked: Callable[[Attempt], bool] = never
    played: Callable[[Tape, Bench], Tape] | None = None
