"""The verbs of signing off: decide about a learner, withdraw the decision; and its reads.

An instructor decides. What the site knows of the learner's practice is put before them and
kept with the decision; it decides nothing.
"""

from dataclasses import dataclass
from datetime import datetime

from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction
from django.http import Http404, HttpRequest
from django.utils import timezone

from course.cohorts import throttle
from course.cohorts.joining import read_code
from course.cohorts.limits import card_limit
from course.cohorts.models import CODE_LENGTH, Cohort, Person
from course.letters import write_to
from course.unwritable import where_it_can_be_kept
from exercises.forms.keys import first_of
from exercises.models import SignOff, Withdrawal
from exercises.standing.evidence import evidence_of


class UnknownCardError(Exception):
    """No card has this code."""


class WithdrawnError(Exception):
    """It was withdrawn before; the text says by whom, and that this reason is not kept."""

    def __init__(self, first: Withdrawal) -> None:
        day = f"{timezone.localtime(first.at):%-d %B %Y}"
        super().__init__(f"{first.by} withdrew it on {day} already. Your reason is not kept.")


@dataclass(frozen=True)
class Line:
    """A learner of a cohort, with the sign-off that counts, if any was ever made."""

    person: Person
    sign_off: SignOff | None

    @property
    def state(self) -> str:
        """The state that holds today: a value of `SignOff.State`, "withdrawn" or "none"."""
        if self.sign_off is None:
            return "none"
        return "withdrawn" if self.sign_off.is_withdrawn else self.sign_off.state


@dataclass(frozen=True, kw_only=True)
class Decision:
    """What an instructor has decided; `key` is the form's own, so that it counts once."""

    state: str
    bench: str
    note: str
    key: str


def sign_off(
    instructor: Person,
    learner: Person,
    cohort: Cohort,
    decision: Decision,
    *,
    now: datetime | None = None,
) -> SignOff:
    """Keep the decision and what was known. Sent twice, it is kept once.

    Raises SentBeforeError where the form's key has kept another decision.
    """
    if not instructor.is_instructor or not learner.is_learner:
        raise PermissionDenied("An instructor signs off a learner.")
    made = SignOff(
        person=learner,
        person_name=learner.name,
        cohort=cohort,
        cohort_name=cohort.name,
        instructor=instructor,
        instructor_name=instructor.name,
        bench=decision.bench,
        state=decision.state,
        note=decision.note,
        evidence=evidence_of(learner),
        at=now or timezone.now(),
        key=decision.key,
    )
    try:
        with transaction.atomic():
            made.save(force_insert=True)
            write_to(learner, f"{made.get_state_display()}, {made.bench}", told(made))
    except IntegrityError:
        return first_of(made, "person_id", "cohort_id", "instructor_id", "bench", "state", "note")
    return made


def told(made: SignOff) -> str:
    """A decision, as its learner is told of it."""
    words = f"{made.instructor_name} has signed on {made.at:%-d %B %Y}: {made.get_state_display()}."
    return f"{words} {made.note}" if made.note else words


def withdraw(
    instructor: Person, found: SignOff, reason: str, *, now: datetime | None = None
) -> Withdrawal:
    """Say that it counts no more. The same a second time gives the first.

    Raises WithdrawnError where it was withdrawn by somebody else, or for another reason.
    """
    try:
        with transaction.atomic():
            made = Withdrawal.objects.create(
                sign_off=found, by=instructor, reason=reason, at=now or timezone.now()
            )
            write_to(found.person, "Your sign-off is withdrawn", f"{instructor} writes: {reason}")
            return made
    except IntegrityError:
        first = Withdrawal.objects.get(sign_off=found)
        if (first.by_id, first.reason) != (instructor.pk, reason):
            raise WithdrawnError(first) from None
        return first


def bench_named(cohort: Cohort) -> str:
    """What the cohort's bench is called: by its figures, or else after the cohort."""
    return cohort.bench.name if cohort.bench else cohort.name


def lines_of(cohort: Cohort) -> list[Line]:
    """Every learner of the cohort with the sign-off that counts; two queries."""
    counting = {each.person_id: each for each in counting_in(cohort)}
    people = Person.objects.learning_in(cohort).order_by("name", "pk")
    return [Line(person, counting.get(person.pk)) for person in people]


def counting_in(cohort: Cohort) -> list[SignOff]:
    """The last sign-off of each of the cohort's people, withdrawn or not."""
    latest = SignOff.objects.filter(cohort=cohort).latest()
    return list(latest.select_related("person", "withdrawal"))


def sign_offs_of(person: Person) -> list[SignOff]:
    """All that were made of a person, the latest first."""
    made = SignOff.objects.filter(person=person).latest_first()
    return list(made.select_related("person", "withdrawal"))


def replaced_by(found: SignOff) -> SignOff | None:
    """The last sign-off of the same person and cohort, if that is a later one."""
    same = SignOff.objects.filter(person=found.person_id, cohort_name=found.cohort_name)
    latest = same.filter(cohort=found.cohort_id).latest_first().first()
    return None if latest is None or latest.pk == found.pk else latest


def standing_of(person: Person) -> list[SignOff]:
    """The sign-offs that count for a person today: one a cohort, none that is withdrawn."""
    latest = SignOff.objects.filter(person=person).latest()
    found = latest.select_related("withdrawal")
    return [each for each in found if not each.is_withdrawn]


def sign_off_for(cohort: Cohort, code: str) -> SignOff:
    """A sign-off made in this cohort, or 404."""
    made = SignOff.objects.filter(cohort=cohort, code=code)
    found = made.select_related("person", "withdrawal__by").first()
    if found is None:
        raise Http404("There is no sign-off of that code.")
    return found


def plain_code(typed: str) -> str:
    """A code as it is stored, however it was typed; nothing where it can't be one."""
    code = read_code(typed)
    return code if len(code) == CODE_LENGTH and code.isascii() else ""


def checked_card(request: HttpRequest, typed: str) -> SignOff:
    """The sign-off of a card. Unknown codes are counted: guessing ends soon.

    A card can be checked also where nothing can be counted; no code is found by guessing in a day.
    """
    limit = card_limit(request)
    with where_it_can_be_kept():
        throttle.count_try(limit)
    # Of somebody whose account is deleted no card counts: nobody could be told by their name.
    made = SignOff.objects.filter(code=plain_code(typed), person__is_deleted=False)
    found = made.select_related("withdrawal").first()
    if found is None:
        raise UnknownCardError
    with where_it_can_be_kept():
        throttle.give_back(limit)
    return found
