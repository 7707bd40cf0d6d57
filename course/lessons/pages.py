"""What pages of lessons have in common."""

from django.http import Http404

from course.lessons.lesson import Lesson
from course.lessons.shelf import shelf


def lesson_or_404(slug: str) -> Lesson:
    found = shelf().find(slug)
    if found is None:
        raise Http404("There is no such lesson.")
    return found
