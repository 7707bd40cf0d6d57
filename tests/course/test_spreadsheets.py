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


@pytest.mark.parametrize("sign", "=+-@＝＋－＠")
@pytest.mark.parametrize("separator", [";", "\t", "\n", "; ", ';"', "; \t"])
def test_formula_that_starts_within_a_text_gets_one_too(separator: str, sign: str) -> None:
    assert safe_cell(f"Mal{separator}{sign}1+1") == f"Mal{separator}'{sign}1+1"


def test_no_cell_is_a_formula_where_semicolons_separate() -> None:
    """Read by Python’s own reader, as by a spreadsheet in a country of decimal commas."""
    lines = csv_lines(("name", "note"), [("Mal;=1+1", "loud;\t@A1\n=B1")])
    text = "".join(lines).removeprefix(BYTE_ORDER_MARK)
    cells = [cell for row in csv.reader(io.StringIO(text), delimiter=";") for cell in row]

    assert [cell for cell in cells if cell.strip(' \t"')[:1] in tuple("=+-@")] == []


@pytest.mark.parametrize(
    "value", ["", "Mina", "a; b", "the mark - then; the cut", "a=b", "'=1", -1, -0.5, None, "é"]
)
def test_anything_else_stays_as_it_is(value: object) -> None:
    assert safe_cell(value) == value


CELLS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\r"))


@given(st.lists(st.tuples(CELLS, CELLS), max_size=5))
def test_what_is_written_is_read_again(rows: list[tuple[str, str]]) -> None:
    text = "".join(csv_lines(("a", "b"), rows)).removeprefix(BYTE_ORDER_MARK)

    read = list(csv.reader(io.StringIO(text, newline="")))

    assert read == [["a", "b"], *([safe_cell(one), safe_cell(two)] for one, two in rows)]
