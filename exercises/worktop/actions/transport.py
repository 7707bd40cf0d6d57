"""Moving tape: winding, stepping, playing."""

from dataclasses import replace

from exercises.drills.setting.phrases import code, length
from exercises.worktop.actions.cassettes import stand
from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.meters import meters_in_words
from exercises.worktop.practical import MASTER
from exercises.worktop.worktop import Worktop

SHUTTLE = 10  # how many times faster than playing the machines wind (common practice)
MOST_PLAYED = 60  # seconds in one go


def wind(top: Worktop, *, machine: str, to: int) -> Done:
    """Raises BenchRefused for a place that is not on the tape."""
    name = threaded(top, machine)
    if not 0 <= to <= end_of(top, name):
        raise BenchRefused(f"{name} ends at {code(end_of(top, name), top.set_up.bench)}.")
    moved = at(top, machine, to, cost=winding(stand(top, machine).at, to))
    return Done(moved, f"{name} stands at {code(to, top.set_up.bench)}.")


def step(top: Worktop, *, machine: str, by: int) -> Done:
    """As far as the tape goes."""
    name = threaded(top, machine)
    to = min(max(0, stand(top, machine).at + by), end_of(top, name))
    cost = winding(stand(top, machine).at, to)
    return Done(at(top, machine, to, cost=cost), f"{name} stands at {code(to, top.set_up.bench)}.")


def next_take(top: Worktop) -> Done:
    name = threaded(top, "player")
    takes = top.set_up.by_name[name].takes if name != MASTER else ()
    take = next((each for each in takes if each.start > top.player.at), None)
    if take is None:
        raise BenchRefused(f"There is no further take on {name}.")
    moved = at(top, "player", take.start, cost=winding(top.player.at, take.start))
    begins = code(take.start, top.set_up.bench)
    return Done(moved, f"Take {take.name} begins at {begins}, with its run-up.")


def play(top: Worktop, *, machine: str, frames: int) -> Done:
    name = threaded(top, machine)
    second = top.set_up.bench.rate.nominal
    if not 0 < frames <= MOST_PLAYED * second:
        raise BenchRefused(f"Play for 1 to {MOST_PLAYED} seconds.")
    begun = stand(top, machine).at
    to = min(begun + frames, end_of(top, name))
    if to == begun:
        raise BenchRefused(f"{name} is at its end.")
    bench = top.set_up.bench
    told = f"{name} played for {length(to - begun, bench.rate)}, to {code(to, bench)}."
    played = at(top, machine, to, cost=to - begun)
    if machine == "recorder":
        return Done(played, told)
    shown = meters_in_words(top, begun, to)
    return Done(replace(played, metered=True), f"{told} {shown}")


def threaded(top: Worktop, machine: str) -> str:
    """The cassette in a machine; BenchRefused where there is none."""
    name: str | None = stand(top, machine).tape
    if name is None:
        raise BenchRefused(f"There is no cassette in the {machine}.")
    return name


def end_of(top: Worktop, name: str) -> int:
    return top.set_up.master_length if name == MASTER else top.set_up.by_name[name].length


def at(top: Worktop, machine: str, frame: int, *, cost: int) -> Worktop:
    moved = top.with_player(at=frame) if machine == "player" else top.with_recorder(at=frame)
    return moved.spending(cost)


def winding(here: int, there: int) -> int:
    return -(-abs(there - here) // SHUTTLE)
