"""CSV that a spreadsheet opens without running anything in it."""

import csv
import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

# What makes a spreadsheet take a cell for a formula; OWASP, “CSV Injection”. The full-width
# forms are read as the plain ones by some programs.
STARTS_FORMULA = tuple("=+-@\t\r\n＝＋－＠")
# Where a comma separates decimals, a spreadsheet may begin a cell after a semicolon or a tab, and
# a line within the text, whatever quotation marks say.
BEGINS_AGAIN = re.compile(r'([;\t\r\n][ "]*)(?=[=+\-@＝＋－＠])')
BYTE_ORDER_MARK = "\ufeff"


def safe_cell(value: Any) -> Any:
    """The value; where a text would start a formula, an apostrophe stands before that.

    Numbers stay numbers: a negative score is no formula.
    """
    if not isinstance(value, str):
        return value
    text = BEGINS_AGAIN.sub(r"\1'", value)
    return f"'{text}" if text.lstrip(" ").startswith(STARTS_FORMULA) else text


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
