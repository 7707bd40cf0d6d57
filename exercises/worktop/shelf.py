"""The practicals there are, in their order; each is a file in `content/`."""

from collections.abc import Iterator
from functools import cache
from pathlib import Path

from exercises.tape import DocumentError
from exercises.worktop.practical import Practical
from exercises.worktop.proving import prove
from exercises.worktop.reading.practical import read_practical
from exercises.worktop.reading.problem import PracticalProblem

CONTENT = Path(__file__).parent / "content"


@cache
def practicals() -> dict[str, Practical]:
    """All of them by slug. Raises PracticalProblem for the first that can't be read."""
    read = (read_practical(path) for path in sorted(CONTENT.glob("*.toml")))
    return {practical.slug: practical for practical in read}


def problems(folder: Path = CONTENT) -> list[PracticalProblem]:
    """What is wrong with the files of a folder, one problem a file: each is planned, too."""
    found: list[PracticalProblem] = []
    former: list[Practical] = []
    for path in sorted(folder.glob("*.toml")):
        try:
            former.append(proved(path, former))
        except PracticalProblem as problem:
            found.append(problem)
    return found


def proved(path: Path, former: list[Practical]) -> Practical:
    """The practical of a file, beside those of the files before. Raises PracticalProblem."""
    practical = read_practical(path)
    for what in taken(practical, former):
        raise PracticalProblem(str(path), 1, f"Another practical has this {what} already.")
    try:
        prove(practical)
    except DocumentError as error:
        text = path.read_text(encoding="utf-8")
        raise PracticalProblem.at_path(str(path), text, error) from None
    return practical


def taken(practical: Practical, former: list[Practical]) -> Iterator[str]:
    if any(practical.number == each.number for each in former):
        yield "number"
    if any(practical.slug == each.slug for each in former):
        yield "name"
