"""What is wrong in a lesson's file, and where."""

from typing import NamedTuple


class LessonProblem(Exception):
    """Raised while a lesson is read: the line it is on, and what to do about it."""

    def __init__(self, line: int, problem: str) -> None:
        self.line = line
        self.problem = problem
        super().__init__(f"line {line}: {problem}")


class Problem(NamedTuple):
    """A problem together with the file that it is in."""

    file: str
    line: int
    problem: str

    def __str__(self) -> str:
        return f"{self.file}:{self.line}: {self.problem}"
