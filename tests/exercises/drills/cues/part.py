"""Questions taken apart into what one answers blindly: a pick among texts, or something whole."""

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from math import factorial, prod

from exercises.drills.asks import Amount, Choice, Dial, Moment, Option, Order, Several, Table
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.question import Question
from tests.exercises.drills.skeletons import skeleton

CODE = re.compile(r"\d\d:\d\d:\d\d[:;]\d\d")


@dataclass(frozen=True)
class Pick:
    """One of `texts` as they stand, from which what was drawn is taken out, is to be picked.

    `right` are the numbers of those that are right. `raw` are the texts as shown, `page` is all
    that the page shows before the answer, and `start` where a control stands. `is_known`: whoever
    has met a text before knows it; that it is right is no cue then, but what was learnt.
    """

    name: str
    texts: tuple[str, ...]
    raw: tuple[str, ...]
    right: frozenset[int]
    page: str = ""
    start: int | None = None
    is_known: bool = False

    @property
    def chance(self) -> float:
        return len(self.right) / len(self.texts)

    def share(self, picked: list[int]) -> float:
        """How likely it is right to pick any of these."""
        return len(self.right.intersection(picked)) / len(picked)


@dataclass(frozen=True)
class Whole:
    """An answer that is given as a whole; `ways` has by rule what it would be, `right` what is.

    Where `chance` is 0, it is that of picking one of the answers that are ever right.
    """

    name: str
    right: str
    ways: dict[str, str]
    chance: float = 0


Part = Pick | Whole


def parts(question: Question) -> Iterator[Part]:
    """All that is asked, but for what an instructor reads."""
    page = json.dumps(question.shown, ensure_ascii=False)
    for ask in question.asks:
        if ask.name not in question.right:
            continue
        right = question.right[ask.name]
        if isinstance(ask, Choice):
            yield picked(ask.name, ask.options, [right], page)
        elif isinstance(ask, Dial):
            yield turned(question, ask)
        elif isinstance(ask, Table):
            yield from cells(ask, right, page)
        elif isinstance(ask, Several):
            yield ticked(ask, right)
        elif isinstance(ask, Order):
            yield from ordered(ask, right)
        elif isinstance(ask, (Amount, Moment)):
            yield typed(ask, right, page)


def picked(
    name: str, options: tuple[Option, ...], right: list[str], page: str, *, is_known: bool = False
) -> Pick:
    raw = tuple(f"{option.text} {option.hint}".strip() for option in options)
    rights = frozenset(at for at, option in enumerate(options) if option.value in right)
    return Pick(name, tuple(map(skeleton, raw)), raw, rights, page, is_known=is_known)


def turned(question: Question, ask: Dial) -> Pick:
    aim = Aim.from_json(question.key["aim"])
    right = frozenset(at for at in range(len(ask.positions)) if aim.is_right(at))
    return Pick(ask.name, ask.positions, ask.positions, right, start=ask.start)


def cells(ask: Table, right: list[list[str]], page: str) -> Iterator[Part]:
    """Each cell; where rows may stay empty, the whole of it by places, and the first row."""
    if ask.spare:
        marks = " + ".join(" ".join(places(ask, row)) for row in right)
        cells_of_a_row = prod(len(column.options) for column in ask.columns)
        yield Whole(ask.name, marks, {f"always {marks}": marks}, 1 / cells_of_a_row)
    for row in right[:1] if ask.spare else right:
        for column, value in zip(ask.columns, row, strict=True):
            yield picked(f"{ask.name}: {column.title}", column.options, [value], page)


def places(ask: Table, row: list[str]) -> Iterator[str]:
    """Which place in its column’s list each value of a row has."""
    for column, value in zip(ask.columns, row, strict=True):
        yield str([option.value for option in column.options].index(value) + 1)


def ticked(ask: Several, right: list[str]) -> Whole:
    """Which places are ticked."""
    places = [at for at, option in enumerate(ask.options, 1) if option.value in right]
    marks = f"{places} of {len(ask.options)}"
    return Whole(ask.name, marks, {f"tick {marks}": marks}, 1 / (2 ** len(ask.options) - 1))


def ordered(ask: Order, right: list[str]) -> Iterator[Part]:
    """The whole order; which step comes first, and which is left out."""
    values = [step.value for step in ask.steps]
    by_length = [step.value for step in sorted(ask.steps, key=lambda step: len(step.text))]
    orders = {"as it stands": values, "backwards": values[::-1]}
    orders |= {"shortest first": by_length, "longest first": by_length[::-1]}
    ways = {
        name: " ".join(value for value in order if value in right) for name, order in orders.items()
    }
    yield Whole(ask.name, " ".join(right), ways, 1 / factorial(len(right)))
    yield picked(f"{ask.name}: first", ask.steps, right[:1], "", is_known=True)
    out = [value for value in values if value not in right]
    if out:
        yield picked(f"{ask.name}: left out", ask.steps, out, "", is_known=True)


def typed(ask: Amount | Moment, right: float, page: str) -> Whole:
    """A value: always the same, or one that is on the page already."""
    told = ask.in_words(right)
    shown = CODE.findall(page) if isinstance(ask, Moment) else []
    ways = {f"code {at} shown": code for at, code in enumerate(shown, 1)}
    ways |= {f"code {at} from the end": code for at, code in enumerate(reversed(shown), 1)}
    unit = f" in {ask.unit}" if isinstance(ask, Amount) else ""
    return Whole(f"{ask.name}{unit}", told, {**ways, f"always {told}": told})
