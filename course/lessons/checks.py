"""Lessons with a mistake, reported by `manage.py check` with file and line."""

from pathlib import Path
from typing import Any

from django.core.checks import CheckMessage, Error, register

from course.lessons.shelf import CONTENT, read_shelf


@register
def check_lessons(**kwargs: Any) -> list[CheckMessage]:
    return check_folder(CONTENT)


def check_folder(folder: Path) -> list[CheckMessage]:
    return [
        Error(problem.problem, obj=f"{problem.file}:{problem.line}", id="lessons.E001")
        for problem in read_shelf(folder).problems
    ]
