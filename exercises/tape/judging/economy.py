"""What a list of recordings costs: tape, generations and time at the bench."""

from collections.abc import Iterable
from dataclasses import dataclass

from exercises.tape.edit import Edit
from exercises.tape.rate import Rate


@dataclass(frozen=True, slots=True)
class Pace:
    """How long the work at the bench takes beside recording, in frames; common practice.

    pre_roll   both machines run up before each recording, and before it is checked (5 s)
    post_roll  and run on for so long after it (2 s)
    set_up     to find, mark and rehearse one recording, and to set its levels (1 min)
    change     to put another source tape into the player (1 min)
    shuttle    how many times faster than playing the machines wind (10 times)
    """

    pre_roll: int
    post_roll: int
    set_up: int
    change: int
    shuttle: int = 10

    @classmethod
    def default(cls, rate: Rate = Rate.R29_97) -> "Pace":
        second = rate.nominal
        return cls(5 * second, 2 * second, set_up=60 * second, change=60 * second)


@dataclass(frozen=True, slots=True)
class Economy:
    """What was spent; all but the first two in frames.

    recordings   how many were made
    generations  the highest generation among what was wanted; 0 if nothing of it is there
    tape         from the start of the master to the last of its pulses
    set_up       finding, marking, rehearsing; changing source tapes
    shuttle      winding to each recording, and back to check it
    pre_roll     running up and on, to record
    record       recording
    check        playing each recording back once
    """

    recordings: int
    generations: int
    tape: int
    set_up: int = 0
    shuttle: int = 0
    pre_roll: int = 0
    record: int = 0
    check: int = 0

    @property
    def bench(self) -> int:
        """Frames at the bench, all told."""
        return self.set_up + self.shuttle + self.pre_roll + self.record + self.check

    def minutes(self, rate: Rate) -> int:
        """Whole minutes to book the bench for."""
        return -(-self.bench // (60 * rate.nominal))


def economy(edits: Iterable[Edit], pace: Pace, *, generations: int, tape: int) -> Economy:
    """Both machines start at the beginning of their tapes and wind at the same time."""
    spent = dict.fromkeys(("set_up", "shuttle", "pre_roll", "record", "check"), 0)
    recordings, loaded, master, player = 0, "", 0, {"": 0}
    for edit in edits:
        name, frames = edit.source.name, edit.out - edit.in_
        roll = pace.pre_roll + frames + pace.post_roll
        cue, source_cue = (max(0, at - pace.pre_roll) for at in (edit.at, edit.in_))
        away = max(abs(master - cue), abs(player.get(name, 0) - source_cue))
        spent["set_up"] += pace.set_up + (pace.change if loaded not in ("", name) else 0)
        spent["shuttle"] += -(-(away + roll) // pace.shuttle)
        spent["pre_roll"] += pace.pre_roll + pace.post_roll
        spent["record"] += frames
        spent["check"] += roll
        recordings, loaded = recordings + 1, name
        master, player[name] = edit.end + pace.post_roll, edit.out + pace.post_roll
    return Economy(recordings, generations, tape, **spent)
