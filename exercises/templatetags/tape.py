"""`{% tape_map map "caption" %}`: the one drawing of a tape, wherever it is shown."""

from typing import Any

from django import template

from exercises.tape import TapeMap

register = template.Library()

# Height of each row of the drawing, from the top, in CSS pixels.
ROWS = {"sound": (46, 18), "picture": (68, 56), "control": (128, 18)}
FAULTS_AT = 152
BARE, WITH_FAULTS = 152, 202


@register.inclusion_tag("tape/map.html")
def tape_map(spec: dict[str, Any], caption: str = "") -> dict[str, Any]:
    """`spec` is `TapeMap.as_json()`, as it is kept with lessons and attempts."""
    shown = TapeMap.from_json(spec)
    return {
        "map": shown,
        "caption": caption,
        "sentences": shown.described(),
        "lanes": [
            (lane.track, *ROWS[lane.track], [(run, room(run.width)) for run in lane.segments])
            for lane in shown.lanes
        ],
        "marks": list(anchored(spec["marks"])),
        "ticks": [tick | {"room": room(100 - tick["left"])} for tick in spec["ticks"]],
        "faults_at": FAULTS_AT,
        "height": WITH_FAULTS if shown.faults else BARE,
    }


def room(percent: float) -> str:
    """How much a label may need where so much of the width is left; the style hides the rest."""
    return (
        "none" if percent < 9 else "little" if percent < 18 else "some" if percent < 28 else "much"
    )


def anchored(marks: list[dict[str, Any]]) -> Any:
    """Each mark with the side its label stands on: outward for a pair, never off the edge."""
    last = len(marks) - 1
    for index, mark in enumerate(sorted(marks, key=lambda mark: float(mark["left"]))):
        outward = "end" if index == 0 and last > 0 else "start"
        edge = "start" if mark["left"] < 15 else "end" if mark["left"] > 85 else None
        yield mark | {"anchor": edge or outward}
