"""The verb that changes what somebody is called. Who teaches them or has signed for them is told.

What was signed keeps its name; see `SignOff`. This is for the rest: a name on a board may not
become another's unseen.
"""

from django.db import transaction
from django.db.models import Q, QuerySet

from course.cohorts.models import Notice, Person


def change_details(person: Person, *, name: str, email: str) -> None:
    """What people say about themselves."""
    with transaction.atomic():
        before = Person.objects.select_for_update().get(pk=person.pk).name
        person.name, person.email = name, email
        person.save(update_fields=["name", "email"])
        tell_of_rename(person, before, by=person)


def tell_of_rename(person: Person, before: str, *, by: Person) -> None:
    """Tell their instructors that a learner was called otherwise before. Within its transaction."""
    if person.is_learner and person.name != before:
        text = told(person, before, by)
        others = instructors_of(person).exclude(pk=by.pk)
        Notice.objects.bulk_create(Notice(person=each, text=text) for each in others)


def told(person: Person, before: str, by: Person) -> str:
    changed = "have changed their name themselves" if by == person else f"were renamed by {by}"
    cards = " What was signed for them keeps the old name." if person.sign_offs.exists() else ""
    return f"{before} is called {person.name} now: they {changed}.{cards}"


def instructors_of(person: Person) -> QuerySet[Person]:
    """Those who teach the learner, and those who have signed for them."""
    answering = Q(taught_cohorts__learners=person) | Q(sign_offs_made__person=person)
    staff = Person.objects.filter(role=Person.Role.INSTRUCTOR, is_active=True)
    return staff.filter(answering).distinct()
