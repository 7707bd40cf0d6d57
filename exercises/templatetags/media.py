"""`{% medium asked n %}`: a picture or a sound of a question, or its words instead."""

from typing import Any

from django import template
from django.urls import reverse

from exercises.drills.media.medium import shape
from exercises.models import Asked
from exercises.practice.media_address import token_of

register = template.Library()


@register.simple_tag
def medium_url(asked: Asked, number: int) -> str:
    return reverse("medium", args=[token_of(asked, number)])


@register.inclusion_tag("practice/medium.html")
def medium(asked: Asked, number: int) -> dict[str, Any]:
    """The medium of that number of a question that was asked.

    A question in its described form shows the words; once it is answered, both.
    """
    spec = asked.as_question().media[number]
    answered = not asked.waits()
    return {
        "template": f"practice/media/{spec['form']}.html",
        "spec": spec,
        "url": medium_url(asked, number),
        "id": f"medium-{asked.pk}-{number}",
        "told": asked.described,
        "drawn": answered or not asked.described,
        **sizes(spec),
    }


def sizes(spec: dict[str, Any]) -> dict[str, int]:
    """In pixels, of one picture and of the file; nothing for a sound."""
    if "size" not in spec:
        return {}
    (width, height), (across, down) = spec["size"], shape(spec)
    return {
        "width": width,
        "height": height,
        "whole_width": width * across,
        "whole_height": height * down,
        "count": len(spec.get("pictures", (None,))),
    }


@register.inclusion_tag("practice/medium.html")
def run_medium(shown: dict[str, Any], number: int, place: int) -> dict[str, Any]:
    """A picture or a sound of a run at the practice bench, with its words beneath."""
    spec = shown["spec"]
    return {
        "template": f"practice/media/{spec['form']}.html",
        "spec": spec,
        "url": shown["url"],
        "id": f"run-{number}-{place}",
        "told": False,
        "drawn": True,
        **sizes(spec),
    }
