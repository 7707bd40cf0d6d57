"""The turns of what was read before turns were kept."""

from datetime import UTC, datetime, timedelta
from importlib import import_module

from django.apps import apps

from course.cohorts.models import Person
from course.lessons.models import Reading

NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)


def test_what_was_read_before_stands_in_the_order_of_its_times(mina: Person, tom: Person) -> None:
    for person, lesson, days in ((mina, "one", 2), (mina, "two", 1), (tom, "one", 3)):
        at = NOON + timedelta(days=days)
        Reading.objects.create(person=person, lesson=lesson, reached_at=at)

    import_module("course.lessons.migrations.0002_reading_turn").in_turn(apps, None)

    turns = Reading.objects.order_by("pk").values_list("turn", flat=True)
    assert list(turns) == [2, 1, 1]
