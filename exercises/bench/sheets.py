"""The verb of the bench sheet: keep what was done in a session at the real machines."""

from dataclasses import dataclass
from datetime import date

from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction

from course.cohorts.access import teaches
from course.cohorts.models import Person
from exercises.forms.keys import first_of
from exercises.models import BenchSheet


@dataclass(frozen=True, kw_only=True)
class SheetSaid:
    """What is told of a session; `habits` has those that came up. `key` is the form's own."""

    day: date
    edits: int
    habits: dict[str, bool]
    wrong: str
    key: str


def keep_sheet(by: Person, person: Person, said: SheetSaid) -> BenchSheet:
    """One's own, or that of a learner whom one teaches. Sent twice, it is kept once.

    Raises SentBeforeError where the form's key has kept something else.
    """
    if by != person and not teaches(by, person):
        raise PermissionDenied("A bench sheet is filled in by the learner, or who teaches them.")
    made = BenchSheet(person=person, by=by, **vars(said))
    try:
        with transaction.atomic():
            made.save()
    except IntegrityError:
        return first_of(made, "person_id", "by_id", "day", "edits", "habits", "wrong")
    return made
