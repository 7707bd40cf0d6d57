"""CSV that a spreadsheet opens without running anything in it."""

import csv
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

# What makes a spreadsheet take a cell for a formula; OWASP, “CSV Injection”. The full-width
# forms are read as the plain ones by some programs.
STARTS_FORMULA = tuple("=+-@\t\r\n＝＋－＠")
BYTE_ORDER_MARK = "\ufeff"


def safe_cell(value: Any) -> Any:
    """The value; a text that would start a formula gets an apostrophe before it.

    Numbers stay numbers: a negative score is no formula.
    """
    if isinstance(value, str) and value.lstrip(" ").startswith(STARTS_FORMULA):
        return f"'{value}"
    return value


class Line:
    """Somewhere for `csv.writer` to write to: it hands each line back."""

    def write(self, text: str) -> str:
        return text


def csv_lines(header: Sequence[str], rows: Iterable[Sequence[Any]]) -> Iterator[str]:
    """The lines of a CSV file (RFC 4180), made as they are asked for.

    It begins with a byte order mark: without one, spreadsheets take UTF-8 for something else.
    """
    writer = csv.writer(Line())
    yield BYTE_ORDER_MARK + str(writer.writerow(header))
    for row in rows:
        yield str(writer.writerow([safe_cell(cell) for cell in row]))
