"""`{% tape_map map "caption" %}`: the one drawing of a tape, wherever it is shown."""

from collections.abc import Iterator
from typing import Any

from django import template

from exercises.tape import TapeMap
from exercises.tape.map.parts import FaultMark, Mark, Segment

register = template.Library()

# Heights of the drawing without and with faults beneath, in CSS pixels.
BARE, WITH_FAULTS = 152, 202

# How wide a figure of a fault's number is, in percent of the map, where the map is narrow.
A_FIGURE = 1.2

# What the template draws. Dicts, because templates look into them quickest.
Part = dict[str, Any]


@register.inclusion_tag("tape/map.html")
def tape_map(spec: Part, caption: str = "") -> Part:
    """`spec` is `TapeMap.as_json()`, as it is kept with lessons and attempts."""
    shown = TapeMap.from_json(spec)
    lanes: Part = {lane.track: [drawn_run(run) for run in lane.segments] for lane in shown.lanes}
    return lanes | {
        "caption": caption,
        "ticks": [drawn_tick(tick) for tick in shown.ticks],
        "marks": list(drawn_marks(shown.marks)),
        "faults": list(drawn_faults(shown.faults or ())),
        "height": WITH_FAULTS if shown.faults else BARE,
        "sentences": shown.described(),
    }


def drawn_run(run: Segment) -> Part:
    return {
        "x": f"{run.left}%",
        "width": f"{run.width}%",
        "label": run.label,
        "generation": run.generation,
        "settled": run.settled,
        "jump": run.jump,
        "room": room_in(run.width),
    }


def drawn_tick(tick: Mark) -> Part:
    return {"x": f"{tick.left}%", "name": tick.name, "room": room_in(100 - tick.left)}


def drawn_faults(faults: tuple[FaultMark, ...]) -> Iterator[Part]:
    for fault, numbers in zip(faults, fault_numbers([each.left for each in faults]), strict=True):
        place = {"x": f"{fault.left}%", "width": f"{fault.width}%", "numbers": numbers}
        yield place | {"when": f"{fault.starts} – {fault.ends}", "sentence": fault.sentence}


def fault_numbers(lefts: list[float]) -> list[str]:
    """What stands beneath each fault: its number, or nothing where one before it has no room.

    That one has both numbers then. Faults are in the order of their places.

    >>> fault_numbers([0, 10, 10, 11, 40])
    ['1', '2, 3, 4', '', '', '5']
    """
    numbers: list[str] = []
    first = 0
    for index, left in enumerate(lefts):
        if numbers and left < lefts[first] + A_FIGURE * len(numbers[first]):
            numbers[first] += f", {index + 1}"
            numbers.append("")
        else:
            first = index
            numbers.append(str(index + 1))
    return numbers


def drawn_marks(marks: tuple[Mark, ...]) -> Iterator[Part]:
    """Each mark with the side its label stands on: outward for a pair, never off the edge."""
    ordered = sorted(marks, key=lambda mark: mark.left)
    for index, mark in enumerate(ordered):
        outward = "end" if index == 0 and len(ordered) > 1 else "start"
        side = "start" if mark.left < 16 else "end" if mark.left > 80 else outward
        label_x = -5 if side == "end" else 5
        yield {"x": f"{mark.left}%", "name": mark.name, "side": side, "label_x": label_x}


def room_in(percent: float) -> str:
    """How long a label may be where so much of the width is left; the style hides the rest."""
    if percent < 9:
        return "none"
    return "little" if percent < 18 else "some" if percent < 28 else "much"
