"""Building the demo: the same every time, and never among other people's data."""

from io import StringIO

import pytest
from django.core.management import CommandError, call_command
from django.db import transaction
from django.utils import timezone

from course.cohorts.models import Person
from exercises.demo.build import build
from exercises.demo.cast import LEARNERS
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


# One of each group; the first sends a picture and writes an answer, the others slip.
SOME = [each for each in LEARNERS if each.sign_in_name in ("maeve", "odo", "tobit")]


def test_demo_is_the_same_every_time() -> None:
    """Of some of its learners: of all of them, it would take twice as long as all that reads it."""
    now = timezone.localtime()
    with transaction.atomic():
        build(now, SOME)
        first, sizes = answers(), picture_sizes()
        transaction.set_rollback(True)
    build(now, SOME)

    assert {name for name, _, _, _ in first} == {each.sign_in_name for each in SOME}
    assert answers() == first
    assert picture_sizes() == sizes
    assert len(sizes) == 1


def picture_sizes() -> list[int]:
    return [each.size for each in Upload.objects.order_by("pk")]


def test_demo_refuses_other_peoples_data(mina: Person) -> None:
    with pytest.raises(CommandError, match="other people’s data"):
        demo()

    assert list(Person.objects.learning_in(mina.cohorts.get())) == [mina]
    assert Attempt.objects.count() == 0


def test_no_sign_ins_are_printed_where_there_is_no_demo() -> None:
    assert demo("--sign-ins") == ""
