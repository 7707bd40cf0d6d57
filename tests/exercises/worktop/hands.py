"""Hands at a practice bench: a plan of recordings, done action by action."""

from collections.abc import Iterable, Iterator
from typing import Any

from exercises.tape import Edit, Insert, Plan
from exercises.worktop.actions import act
from exercises.worktop.practical import MASTER
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import REEL, STEP_SKEW, STEP_TRACKING, Worktop

Taken = tuple[str, dict[str, Any]]


def plan_of(set_up: SetUp) -> Plan:
    session = set_up.session
    assert session.brief is not None
    planned = session.planned(session.brief)
    assert isinstance(planned, Plan), planned
    return planned


def by_the_plan(set_up: SetUp) -> Iterator[Taken]:
    """All that a careful editor does to make the planner's plan."""
    return making(set_up, plan_of(set_up).edits)


def making(set_up: SetUp, edits: Iterable[Edit]) -> Iterator[Taken]:
    """All that a careful editor does to make these recordings."""
    yield "load", {"machine": "recorder", "tape": MASTER}
    yield "recorder-tracking", {"to": 0}
    loaded = None
    for edit in edits:
        if edit.source.name != loaded:
            if loaded:
                yield "take-out", {"machine": "player"}
            loaded = edit.source.name
            yield "load", {"machine": "player", "tape": loaded}
        yield from carefully(set_up, edit)
    yield "hand-in", {}


def carefully(set_up: SetUp, edit: Edit) -> Iterator[Taken]:
    """One edit: lined up, marked, rehearsed, made, looked back at."""
    tape = set_up.by_name[edit.source.name]
    take = tape.take_at(edit.in_)
    seconds = edit.in_ / set_up.bench.rate.nominal
    wanted = tape.tracking + tape.reel * seconds / REEL
    yield "wind", {"machine": "player", "to": edit.in_}
    yield "tracking", {"to": round(wanted / STEP_TRACKING)}
    yield "skew", {"to": round(tape.skew / STEP_SKEW)}
    yield "play", {"machine": "player", "frames": set_up.bench.rate.nominal}
    yield "picture-level", {"gain": None}
    yield "sound-level", {"mode": "by hand", "gain": -take.sound if take else 0}
    if isinstance(edit, Insert):
        yield "mode", {"mode": "insert", "picture": edit.picture, "sound": edit.sound}
    else:
        yield "mode", {"mode": "assemble"}
    for which, frame in (("source_in", edit.in_), ("source_out", edit.out), ("master_in", edit.at)):
        yield "mark", {"which": which, "at": frame}
    yield "rehearse", {}
    yield "record", {}
    yield "look-back", {}


def done(set_up: SetUp, actions: Iterable[Taken]) -> Worktop:
    top = Worktop.at_first(set_up)
    for name, arguments in actions:
        top = act(top, name, arguments).top
    return top
