"""A mistake in a practical's file, and the line it is on."""

from exercises.tape import DocumentError
from exercises.worktop.reading.places import line_of


class PracticalProblem(ValueError):
    """What is wrong with a practical's file, and where: `file`, `line`, `problem`."""

    def __init__(self, file: str, line: int, problem: str) -> None:
        super().__init__(f"{file}:{line}: {problem}")
        self.file, self.line, self.problem = file, line, problem

    @classmethod
    def at_path(cls, file: str, text: str, error: DocumentError) -> "PracticalProblem":
        """`text` is what the file says."""
        problem = f"{error.path} {error.problem}".rstrip(".")
        return cls(file, line_of(text, error.path), f"{problem}.")


def line_told(error: str) -> int:
    """The line that a message of the TOML reader names.

    >>> line_told("Invalid value (at line 3, column 1)")
    3
    """
    _, _, told = error.partition("at line ")
    number = told.partition(",")[0]
    return int(number) if number.isdigit() else 1
