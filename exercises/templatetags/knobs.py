"""What a control does: what monitor and meter show, at every position or at one."""

from collections.abc import Iterator
from functools import cache
from typing import Any

from django import template
from django.template.loader import render_to_string
from django.utils.safestring import SafeString

from exercises.drills.asks import Dial
from exercises.drills.kinds.knobs.face import FACES, SCALE
from exercises.drills.kinds.set_sound_level.heard import LISTENED
from exercises.models import Asked
from exercises.templatetags.media import medium_url, sizes

register = template.Library()

Part = dict[str, Any]


@register.inclusion_tag("drills/kinds/knobs/positions.html", takes_context=True)
def knob_positions(context: template.Context, asked: Asked) -> Part:
    """Every position of a question's control, all hidden but one: where it stands, or stood
    in the answer.

    A style for browsers without scripts shows them all; then it is a contact sheet.
    """
    shown, ask = asked.question["shown"], dial_of(asked)
    at = (context.get("answer") or {}).get(ask.name, ask.start)
    return {
        "name": ask.name,
        "control": shown["control"],
        **drawing(shown),
        "positions": [
            {
                "number": each,
                "told": ask.in_words(each),
                "hidden": each != at,
                **position_of(asked, each),
            }
            for each in ask.every()
        ],
    }


@register.inclusion_tag("drills/kinds/knobs/steps.html")
def knob_steps(asked: Asked) -> Part:
    """Every step of what is watched, each to be opened in its turn; opening one shuts the last."""
    shown = asked.question["shown"]
    return {
        "looks": f"looks-{asked.pk}",
        "places": [
            {"told": told, **position_of(asked, step)} for step, told in enumerate(shown["steps"])
        ],
        **drawing(shown),
    }


@register.inclusion_tag("drills/kinds/knobs/clips.html", takes_context=True)
def knob_clips(context: template.Context, asked: Asked) -> Part:
    """What can be listened to near each position, all hidden but what is near the control."""
    ask = dial_of(asked)
    at = (context.get("answer") or {}).get(ask.name, ask.start)
    near = min(LISTENED, key=lambda each: abs(each - at))
    each = range(len(asked.as_question().media) // len(LISTENED))
    return {
        "asked": asked,
        "name": ask.name,
        "places": [
            {
                "number": position,
                "hidden": position != near,
                "clips": [index * len(each) + number for number in each],
            }
            for index, position in enumerate(LISTENED)
        ],
    }


def dial_of(asked: Asked) -> Dial:
    return next(ask for ask in asked.as_question().asks if isinstance(ask, Dial))


@register.inclusion_tag("drills/kinds/knobs/setting.html")
def knob_setting(asked: Asked, setting: Part) -> Part:
    """One position, with its name and what it means."""
    place = position_of(asked, setting["position"])
    return {"setting": setting, "place": place, **drawing(asked.question["shown"])}


def drawing(shown: Part) -> Part:
    """What a meter is drawn from."""
    return {"scale": scale_of(shown["face"]), "pivot": SCALE.pivot}


@cache
def scale_of(face: str) -> SafeString:
    """The marks of a face, drawn once: a page shows them at every position of the control."""
    marks = FACES[face].marks if face in FACES else ()
    return render_to_string("drills/kinds/knobs/scale.html", {"marks": marks})


def position_of(asked: Asked, position: int) -> Part:
    """What is shown at a position; in words where the question is asked in words."""
    shown = asked.question["shown"]
    readings = shown["readings"]
    return {
        "frames": list(frames(asked, position)),
        "needle": FACES[shown["face"]].needle(readings[position]) if readings else None,
        "meter": shown["meter"][position] if readings else "",
        "words": list(words(asked, position)) if asked.described else [],
    }


def frames(asked: Asked, position: int) -> Iterator[Part]:
    """That part of each strip; none before the answer where the question is asked in words."""
    if asked.described and asked.waits():
        return
    for number, spec in enumerate(asked.as_question().media):
        if spec["form"] == "strip":
            size = sizes(spec)
            row, column = divmod(position, spec["across"])
            yield {
                **size,
                "left": column * size["width"],
                "top": row * size["height"],
                "title": spec["title"],
                "url": medium_url(asked, number),
            }


def words(asked: Asked, position: int) -> Iterator[str]:
    for spec in asked.as_question().media:
        if spec["form"] == "strip" and spec["words"][position]:
            yield spec["words"][position]
