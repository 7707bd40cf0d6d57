"""What each recording would do to the master, worked out once, when the question is made."""

from exercises.drills.asks import Json
from exercises.drills.beliefs import Attempt
from exercises.drills.change import Mode
from exercises.drills.choose_mode.scenario import Task
from exercises.drills.outcome import Outcome
from exercises.tape import Tape, tape_map


def consequences(task: Task, window: tuple[int, int]) -> Json:
    """The master before, and for each mode: the master after, what happened, what is wrong."""
    return {
        "before": _map(task, task.master, window),
        "modes": {mode.value: _consequence(task, mode, window) for mode in Mode},
    }


def _consequence(task: Task, mode: Mode, window: tuple[int, int]) -> Json:
    outcome = Outcome(Attempt(task.master, task.change, mode, task.bench), task.wants)
    return {
        "map": _map(task, outcome.tape, window),
        "happened": outcome.told(),
        "wrong": next(outcome.wrong(), ""),
    }


def _map(task: Task, tape: Tape, window: tuple[int, int]) -> Json:
    start, end = window
    marks = {"edit in": task.change.at, "edit out": task.change.end}
    return tape_map(tape, task.bench, start=start, end=end, marks=marks).as_json()
