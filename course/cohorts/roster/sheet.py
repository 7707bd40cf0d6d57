"""Reading a roster: a CSV file (RFC 4180) as spreadsheets in different countries save it."""

import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass

MOST_LINES = 1000
MOST_BYTES = 1_000_000
SEPARATORS = ",;\t"
COLUMNS = ("name", "e-mail", "cohort", "sign-in name")
# Other ways in which the same heading is written; all without regard to capitals.
ALSO = {"email": "e-mail", "mail": "e-mail", "sign in name": "sign-in name"}


class RosterError(Exception):
    """The file as a whole is no good; the text says why, in a sentence."""


@dataclass(frozen=True)
class Row:
    """A line with what stands in its cells; `number` is that of the file, from 1."""

    number: int
    cells: dict[str, str]
    too_long: bool = False


@dataclass(frozen=True)
class Sheet:
    rows: list[Row]
    ignored: list[str]


def decoded(content: bytes) -> str:
    """The text of a file. UTF-8 with or without a byte order mark; raises `RosterError`."""
    if len(content) > MOST_BYTES:
        raise RosterError("This file is larger than a megabyte. A roster of names is far smaller.")
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise RosterError(
            "This file is not in UTF-8. Save it as “CSV UTF-8” and choose it again."
        ) from error
    if "\0" in text:
        raise RosterError("This is not a CSV file. Save your table as “CSV UTF-8”.")
    return text


def read(text: str) -> Sheet:
    """The lines under the heading, without blank ones. Raises `RosterError`."""
    records = records_of(text)
    _, heading = next(records, (0, []))
    columns = [column_of(cell) for cell in heading]
    if "name" not in columns:
        raise RosterError("The first line must name the columns, and one of them must be “name”.")
    twice = sorted({column for column in columns if column and columns.count(column) > 1})
    if twice:
        raise RosterError(f"The first line has the column “{twice[0]}” twice.")
    rows: list[Row] = []
    for number, cells in records:
        if len(rows) == MOST_LINES:
            raise RosterError(f"This file has more than {MOST_LINES:,} people. Split it in parts.")
        rows.append(row_of(number, cells, columns))
    if not rows:
        raise RosterError("There is nobody in this file: it has only the names of the columns.")
    ignored = [cell for cell, column in zip(heading, columns, strict=True) if not known(column)]
    return Sheet(rows, [cell.strip() for cell in ignored if cell.strip()])


def records_of(text: str) -> Iterator[tuple[int, list[str]]]:
    """Each line that is not blank, with the number of the line it begins at."""
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator(text), strict=True)
    begins = 1
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                yield begins, cells
            begins = reader.line_num + 1
    except csv.Error as error:
        raise RosterError(
            f"Line {begins} can’t be read as CSV: a quotation mark is missing or too many there."
        ) from error


def separator(text: str) -> str:
    """What stands between the cells: whichever the first line has most of."""
    first = next((line for line in text.splitlines() if line.strip()), "")
    return max(SEPARATORS, key=first.count)


def column_of(heading: str) -> str:
    plain = " ".join(heading.lower().split())
    return ALSO.get(plain, plain)


def known(column: str) -> bool:
    return column in COLUMNS


def row_of(number: int, cells: list[str], columns: list[str]) -> Row:
    inside = dict(zip(columns, cells, strict=False))
    beyond = any(cell.strip() for cell in cells[len(columns) :])
    wanted = {column: inside.get(column, "").strip() for column in COLUMNS}
    return Row(number, wanted, too_long=beyond)
