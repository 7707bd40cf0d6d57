"""How far somebody has read: kept as they read, and put to the lessons of the shelf."""

from dataclasses import dataclass
from datetime import datetime

from django.utils import timezone

from course.cohorts.models import Person
from course.lessons.lesson import Lesson
from course.lessons.models import Reading
from course.lessons.shelf import LessonPlace, shelf

SUMMARY = "summary"  # the name of the last section, which every lesson has


@dataclass(frozen=True)
class Read:
    """A lesson of the shelf and how far somebody is with it."""

    lesson: Lesson
    reading: Reading | None

    @property
    def done(self) -> bool:
        return self.reading is not None and self.reading.done

    @property
    def begun(self) -> bool:
        return self.reading is not None and not self.reading.done

    @property
    def place(self) -> LessonPlace | None:
        """Where they were: the section, if the lesson still has it."""
        return shelf().place(self.lesson.slug, self.reading.section) if self.reading else None

    @property
    def section(self) -> str:
        """The title of the section where they were; nothing at the beginning."""
        at = self.reading.section if self.reading else ""
        return next((each.title for each in self.lesson.sections if each.id == at), "")


def readings_of(person: Person) -> list[Read]:
    """Every lesson of the course with how far the person is; one query."""
    known = {reading.lesson: reading for reading in Reading.objects.of(person)}
    return [Read(lesson, known.get(lesson.slug)) for lesson in shelf().lessons]


def reading_of(person: Person, lesson: Lesson) -> Read:
    return Read(lesson, Reading.objects.of(person).filter(lesson=lesson.slug).first())


def reach(person: Person, lesson: Lesson, section: str, now: datetime | None = None) -> None:
    """Keep the furthest section that somebody came to. The summary is the end: all is read."""
    at = now or timezone.now()
    if section == SUMMARY:
        finish(person, lesson, at)
        return
    order = ["", *(each.id for each in lesson.sections)]
    reading, new = Reading.objects.get_or_create(person=person, lesson=lesson.slug)
    known = reading.section if reading.section in order else ""
    if new or order.index(section) > order.index(known):
        turn = Reading.objects.next_turn(person)
        Reading.objects.filter(pk=reading.pk).update(section=section, reached_at=at, turn=turn)


def finish(person: Person, lesson: Lesson, now: datetime | None = None) -> None:
    """Keep that somebody has read a lesson; the first time counts."""
    reading, _ = Reading.objects.get_or_create(person=person, lesson=lesson.slug)
    at = now or timezone.now()
    Reading.objects.filter(pk=reading.pk, done_at=None).update(reached_at=at, done_at=at)
