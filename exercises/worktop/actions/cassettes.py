"""Cassettes in and out."""

from dataclasses import replace

from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.practical import MASTER
from exercises.worktop.worktop import EditMarks, PlayerStand, RecorderStand, Worktop

CHANGE = 30  # seconds to take a cassette out, or to put one in and thread it (common practice)


def load(top: Worktop, *, machine: str, tape: str) -> Done:
    if tape != MASTER and tape not in top.set_up.by_name:
        raise BenchRefused("There is no such cassette on the shelf.")
    for name, there in (("player", top.player.tape), ("recorder", top.recorder.tape)):
        if there == tape:
            raise BenchRefused(f"{tape} is in the {name} already.")
    if stand(top, machine).tape:
        raise BenchRefused(f"There is a cassette in the {machine}. Take it out first.")
    told = f"{tape} is in the {machine}, at its beginning."
    return Done(changed(top, machine, tape), told)


def take_out(top: Worktop, *, machine: str) -> Done:
    tape = stand(top, machine).tape
    if tape is None:
        raise BenchRefused(f"There is no cassette in the {machine}.")
    return Done(changed(top, machine, None), f"{tape} is wound back, and in its case.")


def stand(top: Worktop, machine: str) -> PlayerStand | RecorderStand:
    return top.player if machine == "player" else top.recorder


def changed(top: Worktop, machine: str, tape: str | None) -> Worktop:
    """Marks belong to the cassette that they were made on."""
    bench = top.set_up.bench
    top = top.spending(CHANGE * bench.rate.nominal)
    if machine == "player":
        marks = EditMarks(master_in=top.marks.master_in)
        inserted = top.with_player(tape=tape, at=0)
        return replace(inserted, marks=marks, tracked=False, metered=False)
    return replace(top.with_recorder(tape=tape, at=0), marks=replace(top.marks, master_in=None))
