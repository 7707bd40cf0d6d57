"""What each recording would do to the master, worked out once, when the question is made."""

from collections.abc import Collection, Mapping

from exercises.drills.asks import Json
from exercises.drills.beliefs import Trial, as_played, recorded
from exercises.drills.judging.recording_told import RecordingTold
from exercises.drills.kinds.choose_the_mode.answers import CANNOT
from exercises.drills.kinds.choose_the_mode.scenario import Task
from exercises.drills.setting.change import Mode
from exercises.tape import Tape, tape_map


def consequences(task: Task, window: tuple[int, int]) -> Json:
    """The master before, and for each mode: the master after, what happened, what is wrong."""
    return {
        "before": _map(task, task.master, window),
        "modes": {mode.value: _consequence(task, mode, window) for mode in Mode},
    }


def expectations(
    task: Task, right: str, reveals: Mapping[str, Collection[str]], window: tuple[int, int]
) -> Json:
    """By wrong answer: the master as somebody with the beliefs behind it expects it to be.

    Who thinks that it can't be done expects that of the right mode. Only where it differs from
    what the recording would do.
    """
    modes = {answer: Mode(right if answer == CANNOT else answer) for answer in reveals}
    found = {answer: _expected(task, mode, reveals[answer]) for answer, mode in modes.items()}
    return {
        answer: _map(task, tape, window, faults=False)
        for answer, tape in found.items()
        if tape != recorded(Trial(task.master, task.change, modes[answer], task.bench))
    }


def _expected(task: Task, mode: Mode, beliefs: Collection[str]) -> Tape:
    trial = Trial(task.master, task.change, mode, task.bench)
    return as_played(recorded(trial, beliefs), task.bench, beliefs)


def _consequence(task: Task, mode: Mode, window: tuple[int, int]) -> Json:
    outcome = RecordingTold(Trial(task.master, task.change, mode, task.bench), task.wants)
    return {
        "map": _map(task, outcome.tape, window),
        "happened": outcome.told(),
        "wrong": next(outcome.wrong(), ""),
    }


def _map(task: Task, tape: Tape, window: tuple[int, int], *, faults: bool = True) -> Json:
    start, end = window
    marks = {"edit in": task.change.at, "edit out": task.change.end}
    drawn = tape_map(tape, task.bench, start=start, end=end, marks=marks, faults=faults)
    return drawn.as_json()
