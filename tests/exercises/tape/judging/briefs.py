"""A small bench, tapes of the drawbridge, and briefs about them."""

from exercises.tape import (
    Assemble,
    Bench,
    Brief,
    Edit,
    Insert,
    Judgement,
    Rate,
    Source,
    Take,
    Tape,
    Wanted,
    judge,
    record,
)

BENCH = Bench(Rate.R25, lock=100, relock=20, erase_gap=40)
BRIDGE = Source("bridge", (Take(0, 2000), Take(2100, 4000, generation=2)))
HARBOUR = Source("harbour", (Take(0, 2000),))
BLACK = Source("black", (Take(0, 5000),))
STRIPED = Tape.blank(2000).with_pass(0, 2000, "black")


def picture(source: str, in_: int, out: int, at: int, tolerance: int = 0) -> Wanted:
    return Wanted("picture", source, in_, out, at, tolerance)


def sound(source: str, in_: int, out: int, at: int, tolerance: int = 0) -> Wanted:
    return Wanted("sound", source, in_, out, at, tolerance)


def insert(
    source: Source, in_: int, out: int, at: int, *, picture: bool = True, sound: bool = True
) -> Insert:
    return Insert(source, in_, out, at, picture=picture, sound=sound)


def assemble(source: Source, in_: int, out: int, at: int) -> Assemble:
    return Assemble(source, in_, out, at)


def recorded(*edits: Edit, on: Tape = STRIPED) -> Tape:
    tape = on
    for index, edit in enumerate(edits):
        tape = record(tape, edit, BENCH, index)
    return tape


def judged(brief: Brief, *edits: Edit, on: Tape = STRIPED) -> Judgement:
    return judge(brief, recorded(*edits, on=on), before=on, bench=BENCH, edits=edits)
