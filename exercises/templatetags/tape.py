"""`{% tape_map map "caption" %}`: the one drawing of a tape, wherever it is shown."""

from collections.abc import Iterator
from typing import Any

from django import template

from exercises.tape import TapeMap

register = template.Library()

Part = dict[str, Any]

# Heights of the drawing without and with faults beneath, in CSS pixels.
BARE, WITH_FAULTS = 152, 202


@register.inclusion_tag("tape/map.html")
def tape_map(spec: Part, caption: str = "") -> Part:
    """`spec` is `TapeMap.as_json()`, as it is kept with lessons and attempts."""
    lanes = {lane["track"]: [drawn(run) for run in lane["segments"]] for lane in spec["lanes"]}
    return {
        **lanes,
        "caption": caption,
        "ticks": [drawn(tick, 100 - tick["left"]) for tick in spec["ticks"]],
        "marks": list(anchored(spec["marks"])),
        "faults": [drawn(fault) for fault in spec["faults"] or ()],
        "height": WITH_FAULTS if spec["faults"] else BARE,
        "sentences": TapeMap.from_json(spec).described(),
    }


def drawn(part: Part, free: float | None = None) -> Part:
    """A part of the map with its place as the drawing takes it, and the room for its label."""
    width = part.get("width", 0)
    room = room_in(width if free is None else free)
    return part | {"x": f"{part['left']}%", "width": f"{width}%", "room": room}


def room_in(percent: float) -> str:
    """How long a label may be where so much of the width is left; the style hides the rest."""
    if percent < 9:
        return "none"
    return "little" if percent < 18 else "some" if percent < 28 else "much"


def anchored(marks: list[Part]) -> Iterator[Part]:
    """Each mark with the side its label stands on: outward for a pair, never off the edge."""
    ordered = sorted(marks, key=lambda mark: float(mark["left"]))
    for index, mark in enumerate(ordered):
        outward = "end" if index == 0 and len(ordered) > 1 else "start"
        edge = "start" if mark["left"] < 15 else "end" if mark["left"] > 85 else outward
        yield drawn(mark) | {"anchor": edge, "label_x": -5 if edge == "end" else 5}
