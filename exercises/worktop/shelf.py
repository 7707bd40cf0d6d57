"""The practicals there are, in their order; each is a file in `content/`."""

from functools import cache
from pathlib import Path

from exercises.worktop.practical import Practical
from exercises.worktop.reading.practical import read_practical
from exercises.worktop.reading.problem import PracticalProblem

CONTENT = Path(__file__).parent / "content"


@cache
def practicals() -> dict[str, Practical]:
    """All of them by slug. Raises PracticalProblem for the first that has a mistake."""
    read = (read_practical(path) for path in sorted(CONTENT.glob("*.toml")))
    return {practical.slug: practical for practical in read}


def problems(folder: Path = CONTENT) -> list[PracticalProblem]:
    """What is wrong with the files of a folder, one problem a file."""
    found = []
    for path in sorted(folder.glob("*.toml")):
        try:
            read_practical(path)
        except PracticalProblem as problem:
            found.append(problem)
    return found
