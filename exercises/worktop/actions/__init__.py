"""What hands can do at a bench: each action makes another worktop, or is refused.

An action is kept as its name and its plain arguments, so that a list of them can be done again:
`replay` gives the same worktop, bit for bit.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from typing import Any

from exercises.worktop.actions import cassettes, controls, edits, hints, marks, transport
from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import Worktop

Hands = Callable[..., Done]

ACTIONS: Mapping[str, Hands] = {
    "load": cassettes.load,
    "take-out": cassettes.take_out,
    "wind": transport.wind,
    "step": transport.step,
    "next-take": transport.next_take,
    "play": transport.play,
    "tracking": controls.tracking,
    "skew": controls.skew,
    "recorder-tracking": controls.recorder_tracking,
    "mode": controls.mode,
    "picture-level": controls.picture_level,
    "sound-level": controls.sound_level,
    "monitor": controls.monitor,
    "mark": marks.mark,
    "unmark": marks.unmark,
    "rehearse": edits.rehearse,
    "record": edits.record,
    "stop": edits.stop,
    "look-back": edits.look_back,
    "hint": hints.hint,
    "hand-in": edits.hand_in,
}


def act(top: Worktop, name: str, arguments: Mapping[str, Any]) -> Done:
    """Do one action. Raises BenchRefused with one sentence, where it can't be done."""
    if top.handed_in:
        raise BenchRefused("This practical is handed in: nothing more can be done to its tape.")
    if name not in ACTIONS:
        raise BenchRefused("This bench has no such control.")
    if top.running and name != "stop":
        raise BenchRefused("The recorder is recording. Stop it first.")
    done = ACTIONS[name](top, **arguments)
    return replace(done, top=replace(done.top, done=top.done + 1))


def replay(set_up: SetUp, actions: Iterable[tuple[str, Mapping[str, Any]]]) -> Worktop:
    """The worktop after all these actions, from nothing."""
    top = Worktop.at_first(set_up)
    for name, arguments in actions:
        top = act(top, name, arguments).top
    return top
