from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.beliefs.attempt import Attempt
from exercises.drills.setting.change import Mode
from exercises.tape import Bench, Tape


def never(_: Attempt) -> bool:
    return False


def always(_: Attempt) -> bool:
    return True


def as_it_is(attempt: Attempt) -> Attempt:
    return attempt


def nothing(_: Attempt) -> int:
    return 0


def over_blank_tape(attempt: Attempt) -> bool:
    """Whether the recorder runs up over tape without pulses."""
    return attempt.change.at > 0 and attempt.master.control.at(attempt.change.at - 1) is None


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
    taken: Callable[[Attempt], Attempt] = as_it_is
    before: Callable[[Attempt, Tape], Tape] = lambda _attempt, tape: tape
    after: Callable[[Attempt, Tape, Tape], Tape] = lambda _attempt, _before, tape: tape
    player_locked: Callable[[Attempt], bool] = never
    recorder_locked: Callable[[Attempt], bool] = never
    made_up: Callable[[Attempt], int] = nothing
    played: Callable[[Tape, Bench], Tape] | None = None
