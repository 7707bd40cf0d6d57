"""A small bench for tests of faults: no run-up needed, and takes that say what they carry."""

from dataclasses import replace
from typing import Any

from exercises.tape import (
    Bench,
    Carried,
    Edit,
    Fault,
    FaultKind,
    History,
    Insert,
    Levels,
    Limits,
    Machines,
    Marks,
    Rate,
    Source,
    Take,
    Tape,
    faults,
    record,
)

BENCH = Bench(Rate.R25, lock=0, relock=0, erase_gap=0)
NOTHING = History(Carried(levels=None))
BLACK = Tape.blank(1000).with_pass(0, 1000, "black", made=NOTHING)


def limited(**limits: int) -> Bench:
    return replace(BENCH, limits=Limits(**limits))


def tape(*takes: Take, name: str = "A") -> Source:
    return Source(name, takes)


def carrying(*, white: int = 100, sound: int = 0, room: int = -400, **carried: Any) -> Source:
    """A tape of one take."""
    levels = Levels(white, sound, room)
    return tape(Take(0, 1000, carried=Carried(levels, **carried)))


def spoken(**marks: Any) -> Source:
    return carrying(marks=Marks(**marks))


def insert(
    source: Source,
    in_: int,
    out: int,
    at: int,
    *,
    machines: Machines | None = None,
    tracks: str = "both",
) -> Insert:
    return Insert(
        source,
        in_,
        out,
        at,
        picture=tracks != "sound",
        sound=tracks != "picture",
        machines=machines or Machines(),
    )


def recorded(*edits: Edit, on: Tape = BLACK, bench: Bench = BENCH) -> Tape:
    for index, edit in enumerate(edits):
        on = record(on, edit, bench, index)
    return on


def found(kind: FaultKind, *edits: Edit, on: Tape = BLACK, bench: Bench = BENCH) -> list[Fault]:
    """The faults of one kind after these edits."""
    tape = recorded(*edits, on=on, bench=bench)
    return [fault for fault in faults(tape, bench) if fault.kind is kind]


def told(kind: FaultKind, *edits: Edit, on: Tape = BLACK, bench: Bench = BENCH) -> list[Any]:
    """The same, each as start, end, edit and measured value."""
    return [
        (fault.start, fault.end, fault.edit, fault.measured.value)
        for fault in found(kind, *edits, on=on, bench=bench)
    ]
