"""The verb that deletes a learner with all that was kept about them.

What others answer for stays without them: that an instructor signed somebody off, in what
state, where and on which day. Everything else goes, answers too: a handful of answers with
their times can be traced to whoever gave them, without a name.
"""

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.db.models import Model, QuerySet

from course.cohorts.models import Membership, Notice, Person, ResetLink, RosterUpload
from course.cohorts.throttle import account_limit, forget
from course.lessons.models import Reading
from exercises.models import (
    Asked,
    Assignment,
    Attempt,
    Extension,
    PracticeSession,
    SignOff,
    Summary,
    Withdrawal,
    new_token,
)
from exercises.models.sign_off import new_card_code

ONLY_LEARNERS = "Only learners’ accounts are deleted here. Ask an administrator to close yours."
FORMER = "Former learner"
# Reviews and outcomes go with their attempts.
THEIRS: tuple[type[Model], ...] = (
    Attempt,
    Asked,
    PracticeSession,
    Summary,
    Extension,
    Reading,
    Notice,
    RosterUpload,
    Membership,
)


def delete_learner(person: Person) -> None:
    """Delete a learner: all of it or nothing. Twice at once is once."""
    with transaction.atomic():
        locked = Person.objects.select_for_update().filter(pk=person.pk).first()
        if locked is None or not locked.is_active:
            return
        if not locked.is_learner:
            raise PermissionDenied(ONLY_LEARNERS)
        forget(account_limit(locked.sign_in_name))
        delete_rows(locked)
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
    Assignment.people.through.objects.filter(person=person).delete()


def strip_sign_offs(person: Person) -> None:
    """Leave the decision and its day; the card can't be looked up any more."""
    QuerySet(Withdrawal).filter(sign_off__person=person).update(reason="")
    for made in SignOff.objects.filter(person=person).values_list("pk", flat=True):
        changed = {"code": new_card_code(), "key": new_token(), "note": "", "evidence": {}}
        QuerySet(SignOff).filter(pk=made).update(**changed)


def scrub(person: Person) -> None:
    """A closed account that says nothing of anybody."""
    person.name, person.email, person.is_active = FORMER, "", False
    person.sign_in_name = f"former-{new_token()}"
    person.set_unusable_password()
    person.last_login, person.in_words = None, False
    person.save()
