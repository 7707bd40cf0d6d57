"""The verbs about who teaches a cohort. There is always somebody."""

from django.core.exceptions import PermissionDenied
from django.db import transaction

from course.cohorts.models import Cohort, Person
from course.cohorts.telling import tell


class UnknownInstructorError(Exception):
    """No instructor signs in with this name."""


class LastInstructorError(Exception):
    """Without this instructor nobody would teach the cohort."""


def add_instructor(instructor: Person, cohort: Cohort, sign_in_name: str) -> tuple[Person, bool]:
    """Let another instructor teach the cohort, too; whether they are new to it."""
    refuse_others(instructor, cohort)
    found = Person.objects.filter(
        sign_in_name=sign_in_name, role=Person.Role.INSTRUCTOR, is_active=True
    ).first()
    if found is None:
        raise UnknownInstructorError
    with transaction.atomic():
        locked = Cohort.objects.select_for_update().get(pk=cohort.pk)
        new = not locked.instructors.filter(pk=found.pk).exists()
        if new:
            locked.instructors.add(found)
            tell(found, f"{instructor} has made you an instructor of {cohort}.")
    return found, new


def remove_instructor(instructor: Person, cohort: Cohort, fellow: Person) -> None:
    """Let the fellow, who may be oneself, teach the cohort no more."""
    refuse_others(instructor, cohort)
    with transaction.atomic():
        locked = Cohort.objects.select_for_update().get(pk=cohort.pk)
        stay = locked.instructors.filter(role=Person.Role.INSTRUCTOR, is_active=True)
        if not stay.exclude(pk=fellow.pk).exists():
            raise LastInstructorError
        locked.instructors.remove(fellow)
        if fellow != instructor:
            tell(fellow, f"{instructor} has ended your teaching of {cohort}.")


def refuse_others(instructor: Person, cohort: Cohort) -> None:
    if not Cohort.objects.taught_by(instructor).filter(pk=cohort.pk).exists():
        raise PermissionDenied("Who teaches a cohort, its own instructors decide.")
