"""How somebody stands with the drills of their instructors; two queries."""

from dataclasses import dataclass

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.finding.kinds import own_for
from exercises.models import Attempt


@dataclass(frozen=True)
class OwnProgress:
    """`last` is the latest attempt: at the revision that is asked now, or an earlier one."""

    kind: Kind
    last: Attempt | None

    @property
    def is_new(self) -> bool:
        """Whether what is asked now has not been answered."""
        return self.last is None or self.last.revision != self.kind.revision


def own_progress_of(person: Person) -> list[OwnProgress]:
    drills = own_for(person).select_related("published").order_by("-published_id", "pk")
    kinds = [drill.kind for drill in drills]
    answers = Attempt.objects.filter(person=person, drill__in=[kind.slug for kind in kinds])
    latest = {each.drill: each for each in answers.with_standing().order_by("pk")}
    return [OwnProgress(kind, latest.get(kind.slug)) for kind in kinds]
