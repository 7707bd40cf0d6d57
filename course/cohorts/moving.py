"""The verbs about a learner's place: move it to another cohort, take it away.

A place is all that goes. What the learner has done is theirs, and stays with them.
"""

from django.core.exceptions import PermissionDenied
from django.db import transaction

from course.cohorts.models import Cohort, Membership, Person
from course.cohorts.telling import tell


def move(instructor: Person, learner: Person, origin: Cohort, target: Cohort) -> bool:
    """From one cohort that the instructor teaches to another. False if it was done before."""
    if target.is_archived or not both_taught(instructor, origin, target):
        raise PermissionDenied("You move learners between your own cohorts.")
    with transaction.atomic():
        gone, _ = Membership.objects.filter(cohort=origin, person=learner).delete()
        if gone:
            Membership.objects.get_or_create(cohort=target, person=learner)
            tell(
                learner,
                f"{instructor} moved you from {origin} to {target}. All your answers are kept.",
            )
    return bool(gone)


def remove(instructor: Person, learner: Person, cohort: Cohort) -> bool:
    """Out of a cohort that the instructor teaches. False if it was done before."""
    if not both_taught(instructor, cohort, cohort):
        raise PermissionDenied("You take learners out of your own cohorts.")
    with transaction.atomic():
        gone, _ = Membership.objects.filter(cohort=cohort, person=learner).delete()
        if gone:
            tell(
                learner,
                f"{instructor} took you out of {cohort}. All your answers are kept, and you can "
                f"go on practising; the instructors of {cohort} no longer see it.",
            )
    return bool(gone)


def both_taught(instructor: Person, one: Cohort, other: Cohort) -> bool:
    pks = {one.pk, other.pk}
    return Cohort.objects.taught_by(instructor).filter(pk__in=pks).count() == len(pks)
