from collections.abc import Sequence
from dataclasses import dataclass
from math import perm, prod
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, Option, no_answer

Row = list[str]


@dataclass(frozen=True, kw_only=True)
class Column:
    """What is chosen in each row of a table: one of `options`."""

    title: str
    options: tuple[Option, ...]

    def text(self, value: Any) -> str:
        for option in self.options:
            if option.value == value:
                return option.text
        raise no_answer()


@dataclass(frozen=True, kw_only=True)
class Table(Ask):
    """A choice in every cell of its `lines`; the answer is a list of rows, each a list of values.

    Where `spare`, rows may be left empty: the answer holds the others, at least one.
    """

    form: ClassVar[str] = "table"

    head: str
    lines: tuple[str, ...]
    columns: tuple[Column, ...]
    spare: bool = False

    def read(self, typed: Sequence[str]) -> list[Row]:
        """What the cells say, row by row; a browser sends them in that order."""
        if not any(typed):
            raise AnswerRefused("Choose from the lists. Nothing has been recorded yet.")
        width = len(self.columns)
        if len(typed) != width * len(self.lines):
            raise no_answer()
        rows = [list(typed[at : at + width]) for at in range(0, len(typed), width)]
        filled = [
            row for title, row in zip(self.lines, rows, strict=True) if self._full(title, row)
        ]
        if self.spare and len({tuple(row) for row in filled}) < len(filled):
            raise AnswerRefused("Two rows say the same. Leave one of them empty.")
        return filled

    def _full(self, title: str, row: Row) -> bool:
        """Whether a row has its values; AnswerRefused where some are missing or unknown."""
        if self.spare and not any(row):
            return False
        for column, value in zip(self.columns, row, strict=True):
            if not value:
                what = title if len(row) == 1 else f"{title}: {column.title.lower()}"
                raise AnswerRefused(f"Something is still to be chosen in the row “{what}”.")
            column.text(value)
        return True

    def typed(self, answer: list[Row]) -> list[str]:
        empty = [""] * (len(self.columns) * (len(self.lines) - len(answer)))
        return [value for row in answer for value in row] + empty

    def rows(self, typed: Sequence[str]) -> list[tuple[str, list[tuple[Column, str]]]]:
        cells = iter((*typed, *[""] * (len(self.columns) * len(self.lines))))
        return [(title, [(column, next(cells)) for column in self.columns]) for title in self.lines]

    def in_words(self, answer: Any) -> str:
        return "; ".join(
            f"{title}: {', '.join(words)}"
            for title, words in zip(self.lines, self.texts(answer), strict=False)
        )

    def texts(self, answer: Any) -> list[list[str]]:
        """The words of every cell; AnswerRefused for what `read` can't give."""
        if not isinstance(answer, list) or not 0 < len(answer) <= len(self.lines):
            raise no_answer()
        if len(answer) < len(self.lines) and not self.spare:
            raise no_answer()
        return [self._words(row) for row in answer]

    def _words(self, row: Any) -> list[str]:
        if not isinstance(row, list) or len(row) != len(self.columns):
            raise no_answer()
        return [column.text(value) for column, value in zip(self.columns, row, strict=True)]

    def every(self) -> Sequence[list[Row]]:
        """The same in every row, for each choice; a spare table with one row filled."""
        rows = 1 if self.spare else len(self.lines)
        most = max(len(column.options) for column in self.columns)
        return [
            [
                [column.options[at % len(column.options)].value for column in self.columns]
                for _ in range(rows)
            ]
            for at in range(most)
        ]

    def count(self) -> int:
        """Every choice in every cell; where rows may be empty, of as many rows as there are."""
        row = prod(len(column.options) for column in self.columns)
        rows = len(self.lines)
        return sum(perm(row, some) for some in range(1, rows + 1)) if self.spare else int(row**rows)

    @classmethod
    def of_json(cls, stored: Json) -> "Table":
        columns = tuple(
            Column(title=kept["title"], options=tuple(Option(**each) for each in kept["options"]))
            for kept in stored["columns"]
        )
        return cls(
            name=stored["name"],
            legend=stored["legend"],
            head=stored["head"],
            lines=tuple(stored["lines"]),
            columns=columns,
            spare=stored["spare"],
        )
