"""The verb that deletes a learner with all that was kept about them; nothing else deletes people.

What others answer for stays without them: that an instructor signed somebody off, in what
state, where and on which day. Everything else goes, answers too: a handful of answers with
their times can be traced to whoever gave them, without a name. Whoever answers for something
themselves is not deleted: their account is closed.
"""

from collections.abc import Iterable
from typing import Any

from django.contrib.admin.models import LogEntry
from django.contrib.contenttypes.models import ContentType
from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.db.models import F, Model, Q, QuerySet

from course.cohorts.limits import forget_failures
from course.cohorts.models import (
    BenchChange,
    LinkAgreement,
    LinkRequest,
    Membership,
    Notice,
    Person,
    ResetLink,
    RosterUpload,
)
from course.lessons.models import Reading
from exercises.models import (
    Asked,
    Assignment,
    Attempt,
    BenchSheet,
    Extension,
    OwnDrill,
    OwnRevision,
    PracticalRun,
    Review,
    SignOff,
    Sitting,
    Summary,
    Withdrawal,
    new_token,
)
from exercises.models.sign_off import new_card_code

ONLY_LEARNERS = "Only learners’ accounts are deleted. An administrator can close the others."
ANSWERS = (
    "This account has signed or written for others, as an instructor. So it is not deleted; "
    "an administrator can close it."
)
GONE = "This account is deleted. What is left of it says nothing of anybody."
FORMER = "Former learner"
# By which columns somebody answers for what concerns others. Each is `RESTRICT` in the database.
ANSWERED_FOR: tuple[tuple[type[Model], str], ...] = (
    (SignOff, "instructor"),
    (Withdrawal, "by"),
    (Review, "by"),
    (Assignment, "made_by"),
    (Extension, "by"),
    (OwnDrill, "made_by"),
    (OwnRevision, "by"),
    (BenchChange, "by"),
    (BenchSheet, "by"),
)
# Where somebody may say something of themselves too, and whom a row is about.
OWN_TOO: dict[type[Model], str] = {Review: "attempt__person", BenchSheet: "person"}
# Reviews and outcomes go with their attempts.
THEIRS: tuple[type[Model], ...] = (
    Attempt,
    Asked,
    Sitting,
    PracticalRun,
    BenchSheet,
    Summary,
    Extension,
    Reading,
    Notice,
    RosterUpload,
    Membership,
)


def refusals_of(people: Iterable[Person]) -> dict[Person, str]:
    """Those who can't be deleted, each with the reason; a constant number of queries."""
    found = list(people)
    answering = answering_among([person.pk for person in found])
    reasons = {person: reason_of(person, answering) for person in found}
    return {person: reason for person, reason in reasons.items() if reason}


def reason_of(person: Person, answering: set[int]) -> str:
    if person.is_deleted:
        return GONE
    if not person.is_learner:
        return ONLY_LEARNERS
    return ANSWERS if person.pk in answering else ""


def answering_among(pks: list[int]) -> set[int]:
    """Who of them answers for what concerns others. What one says of oneself is one's own."""
    found: set[int] = set()
    for model, column in ANSWERED_FOR:
        rows: QuerySet[Any] = QuerySet(model).filter(**{f"{column}__in": pks})
        if model in OWN_TOO:
            rows = rows.exclude(**{OWN_TOO[model]: F(column)})
        found.update(rows.values_list(f"{column}_id", flat=True).distinct())
    return found


def refuse(person: Person) -> None:
    for reason in refusals_of([person]).values():
        raise PermissionDenied(reason)


def delete_learner(person: Person) -> None:
    """Delete a learner: all of it or nothing. Twice at once is once."""
    with transaction.atomic():
        locked = Person.objects.select_for_update().filter(pk=person.pk).first()
        if locked is None or locked.is_deleted:
            return
        refuse(locked)
        forget_failures(locked.sign_in_name)
        delete_rows(locked)
        strip_log(locked)
        if SignOff.objects.filter(person=locked).exists():
            strip_sign_offs(locked)
            scrub(locked)
        else:
            locked.delete()


def delete_rows(person: Person) -> None:
    # Plain querysets here and below: those of rows that are only ever added refuse it, and this
    # is the one exception.
    for model in THEIRS:
        QuerySet(model).filter(person=person).delete()
    ResetLink.objects.filter(for_person=person).delete()
    LinkRequest.objects.filter(Q(for_person=person) | Q(asked_by=person)).delete()
    LinkAgreement.objects.filter(by=person).delete()
    Assignment.people.through.objects.filter(person=person).delete()


def strip_sign_offs(person: Person) -> None:
    """Leave the decision and its day; the card can't be looked up any more."""
    QuerySet(Withdrawal).filter(sign_off__person=person).update(reason="")
    for made in SignOff.objects.filter(person=person).values_list("pk", flat=True):
        emptied = {"person_name": FORMER, "note": "", "evidence": {}}
        anew = {"code": new_card_code(), "key": new_token()}
        QuerySet(SignOff).filter(pk=made).update(**emptied, **anew)


def strip_log(person: Person) -> None:
    """What administrators did with the account keeps its day, and no name."""
    about = ContentType.objects.get_for_model(Person)
    entries = LogEntry.objects.filter(content_type=about, object_id=str(person.pk))
    entries.update(object_repr=FORMER, change_message="")


def scrub(person: Person) -> None:
    """A closed account that says nothing of anybody."""
    person.name, person.email, person.is_active, person.is_deleted = FORMER, "", False, True
    person.sign_in_name = f"former-{new_token()}"
    person.set_unusable_password()
    person.last_login, person.in_words = None, False
    person.save()
