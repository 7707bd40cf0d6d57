"""The links in the header: who you are decides which there are."""

from typing import Any, NamedTuple

from django import template
from django.urls import reverse
from django.utils.crypto import salted_hmac

from course.cohorts.models import Person

register = template.Library()


class Place(NamedTuple):
    url_name: str
    title: str


LEARNER = [
    Place("today", "Today"),
    Place("lessons", "Lessons"),
    Place("drills", "Drills"),
    Place("bench-practice", "Bench"),
    Place("record", "My record"),
]
INSTRUCTOR = [
    Place("cohorts", "Cohorts"),
    Place("desk", "Drill desk"),
    Place("lessons", "Lessons"),
    Place("drills", "Drills"),
    Place("bench-practice", "Bench"),
    Place("record", "My record"),
]
ADMINISTRATOR = [Place("admin:index", "Administration"), *LEARNER[1:]]
STRANGER = [Place("lessons", "Lessons")]


def places_for(person: Person) -> list[Place]:
    """What the header offers; a stranger is an anonymous user, without a role."""
    role = getattr(person, "role", None)
    if role == Person.Role.ADMINISTRATOR:
        return ADMINISTRATOR
    if role == Person.Role.INSTRUCTOR:
        return INSTRUCTOR
    return LEARNER if role else STRANGER


@register.filter
def browser_key(person: Person) -> str:
    """Under what a browser keeps something of theirs: always the same, and telling nobody who."""
    digest = salted_hmac("what a browser keeps", str(person.pk), algorithm="sha256")
    return digest.hexdigest()[:24]


@register.inclusion_tag("navigation.html", takes_context=True)
def navigation(context: dict[str, Any]) -> dict[str, Any]:
    """The header's links, the one being looked at marked, and who is signed in."""
    request = context.get("request")
    person = getattr(request, "user", None)
    path = getattr(request, "path", "")
    links = [
        {
            "url": url,
            "title": place.title,
            "here": url == path or (url != "/" and path.startswith(url)),
        }
        for place in places_for(person)  # type: ignore[arg-type]
        for url in [reverse(place.url_name)]
    ]
    return {"links": links, "person": person, "csrf_token": context.get("csrf_token")}
