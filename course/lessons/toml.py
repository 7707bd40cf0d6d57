"""TOML within a lesson's file."""

import re
import tomllib
from typing import Any

from course.lessons.problems import LessonProblem


def load_toml(toml: str, first_line: int) -> dict[str, Any]:
    """Read TOML that begins on `first_line` of the file; its mistakes tell their line."""
    try:
        return tomllib.loads(toml)
    except tomllib.TOMLDecodeError as error:
        where = re.search(r" \(at (?:line (\d+), column \d+|end of document)\)$", str(error))
        inside = int(where[1]) if where and where[1] else toml.count("\n") + 1
        reason = str(error)[: where.start()] if where else str(error)
        raise LessonProblem(first_line + inside - 1, f"This is not TOML: {reason}.") from None


class Place:
    """Finds the line of a file that a key of the TOML in it is on; the first line for others."""

    def __init__(self, toml: str, first_line: int) -> None:
        self.lines = toml.split("\n")
        self.first_line = first_line

    def line_of(self, pattern: str, occurrence: int = 0) -> int:
        found = [i for i, line in enumerate(self.lines) if re.match(pattern, line.strip())]
        return self.first_line + (found[occurrence] if occurrence < len(found) else 0)

    def table(self, name: str, index: int) -> int:
        """The line of a table of a list, by its number: `[[claims]]`."""
        return self.line_of(rf"\[\[\s*{re.escape(name)}\s*\]\]", index)

    def problem(self, key: str, problem: str) -> LessonProblem:
        return LessonProblem(self.line_of(rf'"?{re.escape(key)}"?\s*='), problem)
