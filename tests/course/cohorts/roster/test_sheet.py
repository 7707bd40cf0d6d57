"""Reading a roster file, however a spreadsheet saved it."""

import csv
import io

import pytest

from course.cohorts.roster.sheet import RosterError, decoded, read

PLAIN = "name,e-mail\nMina Tarrant,mina@quay-street.example\nTom Brandreth,\n"
WANTED = [
    (2, "Mina Tarrant", "mina@quay-street.example"),
    (3, "Tom Brandreth", ""),
]


def people(content: bytes) -> list[tuple[int, str, str]]:
    rows = read(decoded(content)).rows
    return [(row.number, row.cells["name"], row.cells["e-mail"]) for row in rows]


@pytest.mark.parametrize(
    "content",
    [
        PLAIN.encode(),
        PLAIN.encode("utf-8-sig"),
        PLAIN.replace("\n", "\r\n").encode(),
        PLAIN.replace("\n", "\r").encode(),
        PLAIN.replace(",", ";").encode("utf-8-sig"),
        PLAIN.replace(",", "\t").encode(),
        PLAIN.replace("name,e-mail", "Name, EMAIL ").encode(),
        PLAIN.removesuffix("\n").encode(),
        (PLAIN + "\n , \n").encode(),
    ],
    ids=["plain", "mark", "crlf", "cr", "semicolons", "tabs", "heading", "no end", "blank lines"],
)
def test_same_people_however_it_is_saved(content: bytes) -> None:
    assert people(content) == WANTED


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_reads_what_the_standard_library_writes(delimiter: str) -> None:
    """Checked with Python's own `csv` writer, which keeps to RFC 4180."""
    names = ['Mina "Min" Tarrant', "Tarrant; Mina, the younger", "Mina\r\nTarrant", "Zoë Ågren"]
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=delimiter)
    writer.writerows([["name", "e-mail"], *([name, ""] for name in names)])

    rows = read(decoded(out.getvalue().encode())).rows

    assert [row.cells["name"] for row in rows] == names
    assert [row.number for row in rows] == [2, 3, 4, 6]


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "The first line must name the columns, and one of them must be “name”."),
        (
            b"who,e-mail\nMina,\n",
            "The first line must name the columns, and one of them must be “name”.",
        ),
        (b"name,email,e-mail\nMina,,\n", "The first line has the column “e-mail” twice."),
        (b"name\n\n", "There is nobody in this file: it has only the names of the columns."),
        (
            "name\nZoë\n".encode("latin-1"),
            "This file is not in UTF-8. Save it as “CSV UTF-8” and choose it again.",
        ),
        (b"name\nMi\0na\n", "This is not a CSV file. Save your table as “CSV UTF-8”."),
        (
            b'name\nMina\n"Tom\n',
            "Line 3 can’t be read as CSV: a quotation mark is missing or too many there.",
        ),
        (b"name\n" + b"Mina\n" * 1001, "This file has more than 1,000 people. Split it in parts."),
        (
            b"name\n" + b"M" * 1_000_000,
            "This file is larger than a megabyte. A roster of names is far smaller.",
        ),
    ],
    ids=["empty", "no name", "twice", "nobody", "latin-1", "nul", "quotes", "lines", "bytes"],
)
def test_file_that_is_no_good_is_refused_in_a_sentence(content: bytes, said: str) -> None:
    with pytest.raises(RosterError) as refused:
        read(decoded(content))

    assert str(refused.value) == said


def test_a_thousand_people_are_read() -> None:
    assert len(people(b"name\n" + b"Mina\n" * 1000)) == 1000


def test_columns_not_known_are_told_and_left() -> None:
    sheet = read("name,Phone,\nMina,12,\n")

    assert (sheet.ignored, [row.cells["name"] for row in sheet.rows]) == (["Phone"], ["Mina"])
