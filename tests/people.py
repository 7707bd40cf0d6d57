"""People and cohorts for tests, made the way the site makes them."""

from typing import Any

from factory.declarations import LazyAttribute, Sequence
from factory.django import DjangoModelFactory

from course.cohorts.models import Cohort, Membership, Person

PASSWORD = "pulses-in-phase"


class PersonFactory(DjangoModelFactory[Person]):
    """A learner, unless `role` says otherwise; signs in with PASSWORD."""

    class Meta:
        model = Person

    sign_in_name = Sequence(lambda n: f"person{n}")
    name = Sequence(lambda n: f"Person {n}")
    email = LazyAttribute(lambda person: f"{person.sign_in_name}@quay-street.example")
    password = PASSWORD

    @classmethod
    def _create(cls, model_class: type[Person], *args: Any, **fields: Any) -> Person:
        return model_class.objects.create_user(*args, **fields)


class CohortFactory(DjangoModelFactory[Cohort]):
    class Meta:
        model = Cohort

    name = Sequence(lambda n: f"Bench group {n}")


def learner(name: str, *cohorts: Cohort) -> Person:
    """A learner with a place in each of the cohorts; "Mina Tarrant" signs in as "mina"."""
    person = PersonFactory.create(name=name, sign_in_name=name.split()[0].lower())
    for cohort in cohorts:
        Membership.objects.create(cohort=cohort, person=person)
    return person


def instructor(name: str) -> Person:
    return PersonFactory.create(
        name=name, sign_in_name=name.split()[0].lower(), role=Person.Role.INSTRUCTOR
    )
