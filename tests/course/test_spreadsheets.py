"""CSV for spreadsheets."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from course.spreadsheets import BYTE_ORDER_MARK, csv_lines, safe_cell


@pytest.mark.parametrize(
    "text", ["=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "  =1+1", "＝1+1", "－1"]
)
def test_text_that_starts_a_formula_gets_an_apostrophe(text: str) -> None:
    assert safe_cell(text) == f"'{text}"


@pytest.mark.parametrize("value", ["", "Mina", "a=b", "'=1", -1, -0.5, None, "é"])
def test_anything_else_stays_as_it_is(value: object) -> None:
    assert safe_cell(value) == value


CELLS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\r"))


@given(st.lists(st.tuples(CELLS, CELLS), max_size=5))
def test_what_is_written_is_read_again(rows: list[tuple[str, str]]) -> None:
    text = "".join(csv_lines(("a", "b"), rows)).removeprefix(BYTE_ORDER_MARK)

    read = list(csv.reader(io.StringIO(text, newline="")))

    assert read == [["a", "b"], *([safe_cell(one), safe_cell(two)] for one, two in rows)]
