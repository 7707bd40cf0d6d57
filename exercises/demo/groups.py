"""The workshop's groups: who teaches each, and when it is over."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from course.cohorts.archiving import archive
from course.cohorts.equipping import set_figures
from course.cohorts.joining import end_code
from course.cohorts.models import Cohort, Person
from course.cohorts.teaching import add_instructor
from exercises.demo.cast import BENCH

AS_GUESSED = {"erase_gap": 50}  # before it was tried on a tape


@dataclass(frozen=True, kw_only=True)
class Group:
    """A cohort. All in days: begun so long ago, the code works on for, archived so long ago."""

    name: str
    begun: int = 28
    co_taught: bool = False
    code_works: int = 0
    archived: int = 0
    removed_in: int = 0


GROUPS = (
    Group(name="Tuesday bench group"),
    Group(name="Saturday bench group", co_taught=True, code_works=9),
    Group(name="Thursday bench group", begun=140, archived=60, removed_in=120),
)


def make_cohorts(instructor: Person, fellow: Person, until: datetime) -> list[Cohort]:
    """One for each of `GROUPS`, all at the same bench, the oldest made first; none is archived."""
    made = {
        group: make_cohort(group, instructor, fellow, until)
        for group in sorted(GROUPS, key=lambda group: -group.begun)
    }
    cohorts = [made[group] for group in GROUPS]
    equip(instructor, cohorts, until)
    return cohorts


def make_cohort(group: Group, instructor: Person, fellow: Person, until: datetime) -> Cohort:
    begun = until - timedelta(days=group.begun)
    cohort = Cohort.objects.create(name=group.name, started_at=begun)
    cohort.instructors.add(instructor)
    if group.co_taught:
        add_instructor(instructor, cohort, fellow.sign_in_name)
    if group.code_works:
        end_code(cohort, (until + timedelta(days=group.code_works)).date())
    return cohort


def equip(instructor: Person, cohorts: list[Cohort], until: datetime) -> None:
    """Describe the bench, and measure its erase gap anew a month later."""
    described = until - timedelta(days=GROUPS[-1].begun)
    for figures, later in ((BENCH | AS_GUESSED, 0), (BENCH, 30)):
        set_figures(instructor, cohorts[0], figures, now=described + timedelta(days=later))
    for cohort in cohorts:
        cohort.refresh_from_db()


def put_away(instructor: Person, cohorts: list[Cohort], until: datetime) -> None:
    """Archive those that are over, once all that was done in them is there."""
    for group, cohort in zip(GROUPS, cohorts, strict=True):
        if group.archived:
            removed = (until + timedelta(days=group.removed_in)).date()
            archive(instructor, cohort, removed, now=until - timedelta(days=group.archived))
