"""The head of a lesson: the fenced block `lesson` that its file begins with, TOML inside."""

import re
from collections.abc import Mapping
from typing import Any, NamedTuple

from course.lessons.lesson import Claim, Front
from course.lessons.problems import LessonProblem
from course.lessons.toml import Place, load_toml

OPENING, CLOSING = "```lesson", "```"
SUMMARY_LINES = 5
TEXTS = ("title", "slug")
LISTS = ("outcome", "drills", "summary", "sources")
CLAIM_KEYS = ("text", "check", "given", "expect")


class Split(NamedTuple):
    """A lesson's file in two: the TOML, the Markdown, and the line each begins on."""

    toml: str
    toml_line: int
    body: str
    body_line: int


def split(text: str) -> Split:
    """Part the head from the text below it."""
    lines = text.split("\n")
    if lines[0].rstrip() != OPENING:
        raise LessonProblem(
            1, f"A lesson begins with the fenced block that describes it, {OPENING} on line 1."
        )
    for index, line in enumerate(lines[1:], start=1):
        if line.rstrip() == CLOSING:
            toml, body = lines[1:index], lines[index + 1 :]
            return Split("\n".join(toml), 2, "\n".join(body), index + 2)
        if line.startswith(CLOSING):  # the next block opens
            break
    raise LessonProblem(1, f"The block {OPENING} is not closed by {CLOSING} on a line of its own.")


def read_front(toml: str, first_line: int) -> Front:
    """The head, every key present and of its kind, no key too many."""
    given = load_toml(toml, first_line)
    place = Place(toml, first_line)
    known = (*TEXTS, "minutes", *LISTS, "claims")
    _refuse_keys(given, known, place)
    texts = {key: _text(given.get(key), key, place) for key in TEXTS}
    lists = {key: _lines(given.get(key), key, place) for key in LISTS}
    if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", texts["slug"]):
        raise place.problem("slug", "slug is small letters, digits and single hyphens.")
    if len(lists["summary"]) != SUMMARY_LINES:
        raise place.problem("summary", f"summary has {SUMMARY_LINES} lines.")
    return Front(
        title=texts["title"],
        slug=texts["slug"],
        minutes=_minutes(given.get("minutes"), place),
        outcome=lists["outcome"],
        drills=lists["drills"],
        summary=lists["summary"],
        sources=lists["sources"],
        claims=_claims(given.get("claims", []), place),
    )


def _refuse_keys(given: Mapping[str, Any], known: tuple[str, ...], place: Place) -> None:
    for key in given:
        if key not in known:
            raise place.problem(key, f"{key} is not known here; known are {', '.join(known)}.")


def _text(value: object, key: str, place: Place) -> str:
    if not isinstance(value, str) or not value.strip():
        raise place.problem(key, f"{key} is missing or is not a text.")
    return value


def _lines(value: object, key: str, place: Place) -> tuple[str, ...]:
    if not isinstance(value, list) or not value:
        raise place.problem(key, f"{key} is missing or is not a list of texts.")
    return tuple(_text(item, key, place) for item in value)


def _minutes(value: object, place: Place) -> int:
    if not isinstance(value, int) or isinstance(value, bool) or not 1 <= value <= 60:
        raise place.problem("minutes", "minutes is missing or is not a whole number from 1 to 60.")
    return value


def _claims(value: object, place: Place) -> tuple[Claim, ...]:
    if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
        raise place.problem("claims", "claims are written as [[claims]] tables.")
    return tuple(_claim(item, place.table("claims", index)) for index, item in enumerate(value))


def _claim(item: dict[str, Any], line: int) -> Claim:
    if set(item) != set(CLAIM_KEYS):
        raise LessonProblem(line, f"A claim has {', '.join(CLAIM_KEYS)}, and nothing else.")
    kinds = {"text": str, "check": str, "given": dict, "expect": str | int}
    for key, kind in kinds.items():
        if not isinstance(item[key], kind):
            raise LessonProblem(line, f"The claim's {key} is of the wrong kind.")
    return Claim(**item, line=line)
