"""What a debrief costs: ``python -m tests.bench.debrief``.

Milliseconds of the processor, the least of several turns, for 300 actions with 40 edits; beside
it what doing the actions again takes by itself, and finding the plan.
"""

import json
import time
from collections.abc import Callable, Iterator

from exercises.drills.setting.settings import USUAL
from exercises.worktop.actions import replay
from exercises.worktop.debrief import debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import MASTER
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.hands import Taken

ACTIONS, EDITS, TURNS = 300, 40, 15
SHOT = 75  # frames


def three_shots() -> SetUp:
    return lay_out(practicals()["three-shots"], USUAL)


def hands() -> Iterator[Taken]:
    """Edits of three seconds, one behind the other, with tracking a little off each time."""
    yield "load", {"machine": "recorder", "tape": MASTER}
    yield "load", {"machine": "player", "tape": "Tape 3"}
    for number in range(EDITS):
        yield "mark", {"which": "source_in", "at": 400}
        yield "mark", {"which": "source_out", "at": 400 + SHOT}
        yield "mark", {"which": "master_in", "at": 1000 + SHOT * number}
        yield "tracking", {"to": number % 5}
        yield from (("rehearse", {}), ("record", {}), ("look-back", {}))
    while True:
        yield "play", {"machine": "recorder", "frames": 25}


def least(work: Callable[[SetUp], object]) -> float:
    """Each turn finds a set-up that nobody has worked anything out of yet."""
    kept = three_shots().as_json()
    return min(_milliseconds(work, SetUp.from_json(kept)) for _ in range(TURNS))


def _milliseconds(work: Callable[[SetUp], object], set_up: SetUp) -> float:
    started = time.process_time()
    work(set_up)
    return 1000 * (time.process_time() - started)


def main() -> None:
    doing = hands()
    actions = [next(doing) for _ in range(ACTIONS)]
    brief = three_shots().session.brief
    assert brief is not None
    figures = {
        "debrief_ms": least(lambda set_up: debrief(set_up, actions)),
        "replay_ms": least(lambda set_up: replay(set_up, actions)),
        "plan_ms": least(lambda set_up: set_up.session.planned(brief)),
        "debrief_kb": len(json.dumps(debrief(three_shots(), actions).as_json())) / 1000,
    }
    rounded = {name: round(value, 1) for name, value in figures.items()}
    for name, value in rounded.items():
        print(f"{name:12} {value:8.1f}")
    print(f"\nGoal: a debrief of {ACTIONS} actions with {EDITS} edits under 60 ms.\n")
    print(json.dumps(rounded))


if __name__ == "__main__":
    main()
