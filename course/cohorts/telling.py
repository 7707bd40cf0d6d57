"""The verb that tells somebody what was done with their account or their place."""

from course.cohorts.models import Notice, Person
from course.letters import write_to


def tell(person: Person, sentence: str, subject: str = "Your place in a cohort") -> None:
    """On Today; by e-mail too where that is set. Within the transaction that it tells of."""
    Notice.objects.create(person=person, text=sentence)
    write_to(person, subject, sentence)
