"""What becomes of a line of a roster."""

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from course.cohorts.models import Cohort, Person
from course.cohorts.roster.lines import Line


class What(StrEnum):
    NEW = "new"
    SAME = "same"
    MOVES = "moves"
    JOINS = "joins"
    WRONG = "wrong"


@dataclass
class Fate:
    """A line and what becomes of it. `first` is the line that makes the account of this one."""

    line: Line
    what: What = What.WRONG
    cohort: Cohort | None = None
    person: Person | None = None
    first: "Fate | None" = None
    leaves: Cohort | None = None
    sign_in_name: str = ""
    reason: str = ""

    @property
    def changes(self) -> bool:
        return self.what in {What.NEW, What.MOVES, What.JOINS}


def digest_of(fates: Iterable[Fate]) -> str:
    """The same for as long as the same would be written."""
    told = [
        (fate.line, fate.what, fate.sign_in_name, fate.reason, *keys_of(fate)) for fate in fates
    ]
    return hashlib.sha256(repr(told).encode()).hexdigest()


def keys_of(fate: Fate) -> list[int | None]:
    return [each.pk if each else None for each in (fate.person, fate.cohort, fate.leaves)]
