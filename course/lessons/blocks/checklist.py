"""A block `checklist`: lines to tick on paper, in groups.

    name      what links call it
    title     what it is for
    lead      how it is used; may be left out
    groups    [[groups]] with a title and lines

Figures of the bench may stand in every text.
"""

from dataclasses import dataclass
from itertools import accumulate
from typing import Any, ClassVar

from course.lessons.problems import LessonProblem
from course.lessons.toml import load_toml

KEYS = {"name", "title", "groups"}


@dataclass(frozen=True, kw_only=True)
class Group:
    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class Checklist:
    part: ClassVar[str] = "checklist"

    name: str
    title: str
    lead: str
    groups: tuple[Group, ...]

    @property
    def id(self) -> str:
        return f"checklist-{self.name}"

    @property
    def numbered(self) -> list[tuple[int, Group]]:
        """Each group with the number of its first line; the lines are counted through."""
        ends = accumulate((len(group.lines) for group in self.groups), initial=1)
        return list(zip(ends, self.groups, strict=False))

    def texts(self) -> list[str]:
        lines = [text for group in self.groups for text in (group.title, *group.lines)]
        return [self.title, self.lead, *lines]


def read_checklist(source: str, line: int) -> Checklist:
    """The checklist that the block beginning on `line` describes."""
    given = load_toml(source, line + 1)
    if not KEYS <= set(given) <= {*KEYS, "lead"}:
        raise LessonProblem(
            line, "A checklist has name, title, groups, may have lead, and nothing else."
        )
    groups = given["groups"]
    if not isinstance(groups, list) or not groups:
        raise LessonProblem(line, "A checklist has [[groups]], each with a title and lines.")
    texts = {key: _text(given.get(key, ""), line) for key in ("name", "title", "lead")}
    return Checklist(**texts, groups=tuple(_group(group, line) for group in groups))


def _group(given: Any, line: int) -> Group:
    if not isinstance(given, dict) or set(given) != {"title", "lines"} or not given["lines"]:
        raise LessonProblem(line, "A checklist has [[groups]], each with a title and lines.")
    return Group(
        title=_text(given["title"], line),
        lines=tuple(_text(each, line) for each in given["lines"]),
    )


def _text(given: Any, line: int) -> str:
    if not isinstance(given, str):
        raise LessonProblem(line, f"{given!r} in the checklist is not a text.")
    return given
