"""Whom and what an instructor's roster can be about: their own people and cohorts."""

import re
from collections import defaultdict
from dataclasses import dataclass, field

from django.utils.text import slugify

from course.cohorts.models import Cohort, Membership, Person


@dataclass
class Known:
    """What the site knows when a roster is looked through; four queries.

    Of people who are in nobody's cohort, or in that of somebody else, only that a sign-in
    name or an e-mail address is taken: not whose it is.
    """

    cohorts: list[Cohort]
    people: list[Person]
    places: dict[int, set[int]]  # of each of the people, those of the cohorts they are in
    sign_in_names: set[str]
    emails: set[str]
    reserved: set[str] = field(default_factory=set)  # sign-in names that the roster itself gives
    by_sign_in_name: dict[str, Person] = field(init=False)
    by_email: dict[str, list[Person]] = field(init=False)
    by_name: dict[str, list[Person]] = field(init=False)

    def __post_init__(self) -> None:
        self.by_sign_in_name = {person.sign_in_name: person for person in self.people}
        self.by_email, self.by_name = defaultdict(list), defaultdict(list)
        for person in self.people:
            self.by_name[person.name.casefold()].append(person)
            if person.email:
                self.by_email[person.email.casefold()].append(person)

    def cohorts_named(self, name: str) -> list[Cohort]:
        return [each for each in self.cohorts if each.name.casefold() == name.casefold()]

    def free_name(self, name: str) -> str:
        """A sign-in name for somebody new, taken by this."""
        plain = re.sub(r"[-_]+", ".", slugify(name))[:40].strip(".") or "learner"
        free, count = plain, 1
        while free in self.sign_in_names or free in self.reserved:
            count += 1
            free = f"{plain}{count}"
        self.reserved.add(free)
        return free


def known_to(instructor: Person) -> Known:
    taught = Cohort.objects.taught_by(instructor)
    current = list(taught.current())
    people = Person.objects.filter(role=Person.Role.LEARNER, memberships__cohort__in=taught)
    places: dict[int, set[int]] = defaultdict(set)
    for cohort, person in Membership.objects.filter(cohort__in=current).values_list(
        "cohort_id", "person_id"
    ):
        places[person].add(cohort)
    taken = list(Person.objects.values_list("sign_in_name", "email"))
    return Known(
        cohorts=current,
        people=list(people.distinct()),
        places=places,
        sign_in_names={name for name, _ in taken},
        emails={email.casefold() for _, email in taken if email},
    )
