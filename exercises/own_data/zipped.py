"""A ZIP file that is made while it is sent, so that it may be of any size."""

import json
from collections.abc import Iterable, Iterator, Sequence
from typing import IO, Any, cast
from zipfile import ZIP_DEFLATED, ZipFile

from django.core.serializers.json import DjangoJSONEncoder

from course.cohorts.models import Person
from course.spreadsheets import csv_lines
from exercises.own_data.parts import PARTS, Part
from exercises.practice.uploads import pictures_of

ABOUT = """\
Everything that Run-up keeps about {person}, at {now}.

There are two files of each kind: JSON as it is kept, and CSV for a spreadsheet. The pictures that
you sent are in the folder pictures, under the names that pictures-sent gives them. In CSV a text
that a spreadsheet would take for a formula begins with an apostrophe. Times are in UTC.
A password is kept as a digest only, and left out. So is the answer to a question that still waits
for yours. While you are signed in, your browser's session is kept, too: it has only the number of
your account.

"""


class Outflow:
    """Somewhere for `ZipFile` to write to; what has come is taken away."""

    def __init__(self) -> None:
        self.waiting = bytearray()

    def write(self, content: bytes) -> int:
        self.waiting += content
        return len(content)

    def flush(self) -> None:
        """There is nothing behind this to hand on to."""

    def take(self) -> bytes:
        content = bytes(self.waiting)
        self.waiting.clear()
        return content


def zipped(files: Iterable[tuple[str, Iterable[str | bytes]]]) -> Iterator[bytes]:
    """The bytes of a ZIP file with these names and lines, or pieces of a picture."""
    out = Outflow()
    with ZipFile(cast("IO[bytes]", out), "w", ZIP_DEFLATED) as archive:
        for name, lines in files:
            with archive.open(name, "w") as file:
                for line in lines:
                    file.write(line if isinstance(line, bytes) else line.encode())
                    if out.waiting:
                        yield out.take()
    yield out.take()


def files_of(person: Person, now: str) -> Iterator[tuple[str, Iterable[str | bytes]]]:
    about = ABOUT.format(person=person, now=now)
    yield "about.txt", [about, *(f"{part.name}\n" for part in PARTS)]
    for part in PARTS:
        yield f"{part.name}.json", json_lines(part, person)
        yield f"{part.name}.csv", csv_of(part, person)
    for name, content in pictures_of(person):
        yield f"pictures/{name}", [content]


def json_lines(part: Part, person: Person) -> Iterator[str]:
    """One array, an object a row."""
    headings, before = list(part.columns()), "[\n"
    for row in part.rows(person):
        yield before + dumped(dict(zip(headings, row, strict=True)))
        before = ",\n"
    yield "[]\n" if before == "[\n" else "\n]\n"


def csv_of(part: Part, person: Person) -> Iterator[str]:
    return csv_lines(list(part.columns()), (flat(row) for row in part.rows(person)))


def flat(row: Sequence[Any]) -> list[Any]:
    """The row with what has an inside as JSON text."""
    return [dumped(cell) if isinstance(cell, dict | list) else cell for cell in row]


def dumped(value: Any) -> str:
    return json.dumps(value, cls=DjangoJSONEncoder, ensure_ascii=False)
