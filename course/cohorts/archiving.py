"""The verbs that put a cohort away: archive it, open it again, remove it on its day."""

from datetime import date, datetime

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.utils import timezone

from course.cohorts.models import Cohort, Person
from course.cohorts.telling import tell


def archive(
    instructor: Person, cohort: Cohort, remove_on: date | None, *, now: datetime | None = None
) -> None:
    """Put the cohort away: nobody joins it. It is removed on that day, or never."""
    refuse_others(instructor, cohort)
    cohort.archived_at = cohort.archived_at or now or timezone.now()
    cohort.remove_on = remove_on
    cohort.save(update_fields=["archived_at", "remove_on"])


def reopen(instructor: Person, cohort: Cohort) -> None:
    """Have the cohort among the others again; it is not removed."""
    refuse_others(instructor, cohort)
    cohort.archived_at = cohort.remove_on = None
    cohort.save(update_fields=["archived_at", "remove_on"])


def refuse_others(instructor: Person, cohort: Cohort) -> None:
    if not Cohort.objects.taught_by(instructor).filter(pk=cohort.pk).exists():
        raise PermissionDenied("Only its own instructors put a cohort away.")


def remove_due(today: date) -> list[str]:
    """Remove archived cohorts whose day has come; their names.

    Places, assignments and rosters go. What the learners have done is theirs, and stays.
    """
    due = Cohort.objects.archived().filter(remove_on__lte=today).values_list("pk", flat=True)
    return [name for name in (remove(pk, today) for pk in list(due)) if name]


def remove(pk: int, today: date) -> str:
    """Remove one cohort; nothing where it was opened again meanwhile."""
    with transaction.atomic():
        cohort = Cohort.objects.select_for_update().filter(pk=pk, remove_on__lte=today).first()
        if cohort is None or not cohort.is_archived:
            return ""
        for person in cohort.learners.all():
            tell(person, f"{cohort} is over and was removed. All your answers are kept.")
        cohort.delete()
    return cohort.name
