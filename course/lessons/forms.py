from typing import Any

from django import forms

from course.lessons.lesson import Lesson
from course.lessons.reading import SUMMARY


class ReachedForm(forms.Form):
    """The section of a lesson that came into view."""

    section = forms.ChoiceField(
        error_messages={
            "required": "Name the section that was reached.",
            "invalid_choice": "The lesson has no such section.",
        }
    )

    def __init__(self, *args: Any, lesson: Lesson, **options: Any) -> None:
        super().__init__(*args, **options)
        names = [*(each.id for each in lesson.sections), SUMMARY]
        self.fields["section"].choices = [(name, name) for name in names]  # type: ignore[attr-defined]
