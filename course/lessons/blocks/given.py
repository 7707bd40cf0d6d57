"""What a block says, key by key; each mistake is told with the line that it is on."""

import re
from collections.abc import Iterator, Mapping
from typing import Any

from course.lessons.problems import LessonProblem
from course.lessons.toml import Place, load_toml

NAME = re.compile(r"[a-z0-9-]+")


class Given:
    """The keys of a block that begins on `line`, or of one of its tables, which `what` names.

    Every method that reads a key raises LessonProblem where it is missing or not what it
    should be; with a default, it may be left out.
    """

    def __init__(self, values: Mapping[str, Any], place: Place, line: int, what: str = "") -> None:
        self.values = values
        self.place = place
        self.line = line
        self.what = f" in {what}" if what else ""

    @classmethod
    def block(cls, toml: str, line: int) -> "Given":
        return cls(load_toml(toml, line + 1), Place(toml, line + 1), line)

    def and_(self, other: "Given") -> "Given":
        """The keys of a table over those of the block that it is in."""
        merged = Given({**self.values, **other.values}, self.place, other.line)
        merged.what = other.what
        return merged

    def only(self, *known: str) -> None:
        for key in self.values:
            if key not in known:
                raise self.problem(key, f"{key} is not known here; known are {', '.join(known)}.")

    def __contains__(self, key: str) -> bool:
        return key in self.values

    def problem(self, key: str, sentence: str) -> LessonProblem:
        """A problem on the line of a key; of the table or the block, where it has none."""
        if key in self.values:
            named = rf'("?{re.escape(key)}"?\s*=|\[+\s*{re.escape(key)}\s*\]+)'
            lines = self.place.lines
            first = self.line - self.place.first_line if self.what else 0
            for index in range(max(first, 0), len(lines)):
                if re.match(named, lines[index].strip()):
                    return LessonProblem(self.place.first_line + index, sentence)
        return LessonProblem(self.line, sentence)

    def text(self, key: str, *, most: int = 0, default: str | None = None) -> str:
        """Words; no more than `most` letters, where the drawing has no room for more."""
        value = self.values.get(key, default)
        if not isinstance(value, str) or (default is None and not value.strip()):
            raise self.problem(key, f"{key}{self.what} is missing or is not a text.")
        if most and len(value) > most:
            raise self.problem(key, f"“{value}” has more than {most} letters.")
        return value

    def name(self) -> str:
        value = self.text("name")
        if NAME.fullmatch(value) is None:
            raise self.problem("name", "name is small letters, digits and hyphens.")
        return value

    def one_of(self, key: str, known: tuple[str, ...], *, default: str | None = None) -> str:
        value = self.values.get(key, default)
        if value not in known:
            raise self.problem(key, f"{key}{self.what} is one of {', '.join(known)}.")
        return str(value)

    def whole(self, key: str, least: int, most: int, *, default: int | None = None) -> int:
        value = self.values.get(key, default)
        if type(value) is not int or not least <= value <= most:
            raise self.problem(
                key, f"{key}{self.what} is a whole number from {least} to {most}.".replace("-", "−")
            )
        return value

    def table(self, key: str) -> "Given":
        """A table of the block; an empty one, where it is left out."""
        value = self.values.get(key, {})
        if not isinstance(value, dict):
            raise self.problem(key, f"{key}{self.what} is not a table.")
        return Given(value, self.place, self.problem(key, "").line, key)

    def tables(self, key: str) -> Iterator["Given"]:
        """The tables of a list, in order; none, where it is left out."""
        value = self.values.get(key, [])
        if not isinstance(value, list) or not all(isinstance(each, dict) for each in value):
            raise self.problem(key, f"{key}{self.what} is not a list of tables.")
        own = self.problem(key, "").line
        for index, each in enumerate(value):
            line = max(self.place.table(key, index), own)
            yield Given(each, self.place, line, f"{key}[{index}]")
