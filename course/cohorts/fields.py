"""Fields for what people type about themselves, and what they say when it is no good."""

import unicodedata
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from course.cohorts.models import Person
from course.cohorts.passwords import LONGEST
from course.cohorts.visible import UNSEEN, refuse_invisible

SAID_PLAINLY: dict[str, Any] = {
    "required": "This is still empty.",
    "max_length": "Use at most %(limit_value)s characters. This has %(show_value)s.",
    "null_characters_not_allowed": UNSEEN,
}
# Marks that turn the writing direction of all that follows on the page.
TURNS = {"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"}


def refuse_unseen(text: str) -> None:
    """Refuse what can't be seen but would disturb the page around it."""
    for letter in text.replace("\0", ""):  # every field refuses that one already
        if unicodedata.category(letter) == "Cc" or unicodedata.bidirectional(letter) in TURNS:
            raise ValidationError(UNSEEN)


def refuse_what_hides(text: str) -> None:
    """For names: `refuse_unseen` and `refuse_invisible`, in one sentence."""
    refuse_unseen(text)
    refuse_invisible(text)


class TextField(forms.CharField):
    default_error_messages = SAID_PLAINLY


class TitleField(TextField):
    """A name of somebody or something, on one line, with single spaces."""

    def __init__(self, **options: Any) -> None:
        super().__init__(max_length=120, validators=[refuse_what_hides], **options)

    def to_python(self, value: object) -> str:
        return " ".join((super().to_python(value) or "").split())


class PasswordField(TextField):
    def __init__(self, *, autocomplete: str, **options: Any) -> None:
        widget = forms.PasswordInput(attrs={"autocomplete": autocomplete})
        super().__init__(max_length=LONGEST, strip=False, widget=widget, **options)


class SignInNameField(TextField):
    """A sign-in name as it is stored; what is checked is that, not what was typed."""

    widget = forms.TextInput(
        attrs={"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}
    )

    def to_python(self, value: object) -> str:
        return Person.normalize_username(super().to_python(value) or "")
