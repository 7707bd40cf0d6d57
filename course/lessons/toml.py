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
