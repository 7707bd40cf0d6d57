"""The verb that builds the demo: Quay Street Media Workshop, its people and their weeks."""

from collections.abc import Sequence
from datetime import datetime

from django.contrib.auth.hashers import make_password
from django.db import transaction

from course.cohorts.models import Cohort, Membership, Person
from exercises.demo.assigned import do_all, give_more_time, set_all
from exercises.demo.at_bench import at_bench
from exercises.demo.cast import (
    ADMINISTRATOR,
    FELLOW,
    INSTRUCTOR,
    LEARNERS,
    PASSWORD,
    Learner,
)
from exercises.demo.decisions import sign
from exercises.demo.groups import GROUPS, make_cohorts, put_away
from exercises.demo.in_order import Story, happen
from exercises.demo.own import answer_drills, write_drills
from exercises.demo.pictured import send, write_own
from exercises.demo.practice import practise, read
from exercises.demo.written import write
from exercises.models import Assignment

STAFF = {ADMINISTRATOR[0], INSTRUCTOR[0], FELLOW[0]}
SIGN_IN_NAMES = STAFF | {learner.sign_in_name for learner in LEARNERS}


class OtherPeopleError(Exception):
    """The database has people who are not of the demo."""


def is_built() -> bool:
    return Person.objects.filter(sign_in_name=INSTRUCTOR[0]).exists()


def build(until: datetime, learners: Sequence[Learner] = LEARNERS) -> None:
    """All of it or nothing. Raises `OtherPeopleError` where somebody else has an account."""
    if Person.objects.exclude(sign_in_name__in=SIGN_IN_NAMES).exists():
        raise OtherPeopleError
    until = until.replace(second=0, microsecond=0)  # so that the same comes first every time
    with transaction.atomic():
        make_person(*ADMINISTRATOR, role=Person.Role.ADMINISTRATOR)
        instructor = make_person(*INSTRUCTOR, role=Person.Role.INSTRUCTOR)
        fellow = make_person(*FELLOW, role=Person.Role.INSTRUCTOR)
        cohorts = make_cohorts(instructor, fellow, until)
        current = [each for each, group in zip(cohorts, GROUPS, strict=True) if not group.archived]
        asked = {cohort: set_all(instructor, cohort, until) for cohort in current}
        leads = write_own(instructor, current, until)
        own = write_drills(instructor, current, until)
        stories: list[Story] = []
        for learner in learners:
            cohort = cohorts[learner.cohort]
            person = enrol(learner, cohort)
            signer = fellow if GROUPS[learner.cohort].co_taught else instructor
            stories += weeks_of(person, learner, asked.get(cohort, []), instructor, until)
            stories += [
                sign(signer, person, cohort, until),
                send(person, instructor, leads, until),
                *answer_drills(person, learner, own, until),
                *at_bench(person, until),
            ]
        happen(*stories)
        put_away(instructor, cohorts, until)
        # All have the same: to hash it for each would take seconds.
        Person.objects.update(password=make_password(PASSWORD))


def weeks_of(
    person: Person,
    learner: Learner,
    asked: list[Assignment],
    instructor: Person,
    until: datetime,
) -> list[Story]:
    """What somebody read, practised, did as it was asked of them, and wrote."""
    give_more_time(instructor, person, learner, asked)
    return [
        read(person, learner, until),
        practise(person, learner, until),
        *do_all(person, learner, asked, until),
        write(person, instructor, until),
    ]


def make_person(sign_in_name: str, name: str, role: str = Person.Role.LEARNER) -> Person:
    return Person.objects.create_user(sign_in_name, name=name, role=role)


def enrol(learner: Learner, cohort: Cohort) -> Person:
    person = make_person(learner.sign_in_name, learner.name)
    Membership.objects.create(cohort=cohort, person=person, joined_at=cohort.started_at)
    return person
