"""Practicals with a mistake, reported by `manage.py check` with file and line."""

from pathlib import Path
from typing import Any

from django.core.checks import CheckMessage, Error, register

from course.lessons.shelf import CONTENT as LESSONS
from exercises.worktop.reading.places import line_of
from exercises.worktop.reading.practical import read_practical
from exercises.worktop.shelf import CONTENT, problems


@register
def check_practicals(**kwargs: Any) -> list[CheckMessage]:
    return check_folder(CONTENT)


def check_folder(folder: Path) -> list[CheckMessage]:
    found = problems(folder)
    mistaken = {problem.file for problem in found}
    sound = [path for path in sorted(folder.glob("*.toml")) if str(path) not in mistaken]
    return [
        *(
            Error(problem.problem, obj=f"{problem.file}:{problem.line}", id="practicals.E001")
            for problem in found
        ),
        *(message for path in sound for message in check_lesson(path)),
    ]


def check_lesson(path: Path) -> list[CheckMessage]:
    """Whether the lesson that a practical names is one of the course."""
    lesson = read_practical(path).lesson
    if lesson in {each.stem.partition("-")[2] for each in LESSONS.glob("*.md")}:
        return []
    line = line_of(path.read_text(encoding="utf-8"), "lesson")
    problem = f"lesson names no lesson of the course: {lesson}."
    return [Error(problem, obj=f"{path}:{line}", id="practicals.E002")]
