"""Building the demo: the same every time, and never among other people's data."""

from io import StringIO

import pytest
from django.core.management import CommandError, call_command
from django.db import transaction

from course.cohorts.models import Person
from exercises.demo.cast import LEARNERS
from exercises.demo.pictured import SENT
from exercises.demo.written import WRITTEN
from exercises.models import Attempt, Upload

pytestmark = pytest.mark.django_db


def demo(*arguments: str) -> str:
    out = StringIO()
    call_command("demo", *arguments, stdout=out)
    return out.getvalue()


def answers() -> list[tuple[str, int, str, int]]:
    rows = Attempt.objects.order_by("person__sign_in_name", "pk")
    return [
        (attempt.person.sign_in_name, attempt.seed, attempt.kind.title, attempt.score)
        for attempt in rows.select_related("person")
    ]


def test_demo_is_the_same_every_time() -> None:
    with transaction.atomic():
        demo()
        first, sizes = answers(), [each.size for each in Upload.objects.order_by("pk")]
        transaction.set_rollback(True)
    demo()

    assert answers() == first
    assert (Upload.objects.count(), len(sizes)) == (len(SENT), len(SENT))
    assert [each.size for each in Upload.objects.order_by("pk")] == sizes
    practised = sum(len(learner.days) * learner.answers for learner in LEARNERS)
    assert len(first) >= practised + len(WRITTEN)


def test_demo_refuses_other_peoples_data(mina: Person) -> None:
    with pytest.raises(CommandError, match="other people’s data"):
        demo()

    assert list(Person.objects.learning_in(mina.cohorts.get())) == [mina]
    assert Attempt.objects.count() == 0


def test_no_sign_ins_are_printed_where_there_is_no_demo() -> None:
    assert demo("--sign-ins") == ""
