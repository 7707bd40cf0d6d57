"""Fields that several forms of practice share."""

import secrets
from typing import Any

from django import forms

from course.cohorts.fields import TextField, refuse_unseen

LONGEST_TEXT = 2000


def new_key() -> str:
    return secrets.token_hex(16)


INCOMPLETE = "This page was incomplete. Look through what you wrote, then send it again."
SENT_BEFORE = (
    "This page was sent before with something else in it, and that is kept. "
    "If this is to be kept too, send it again."
)


class KeyField(forms.RegexField):
    """Hidden; tells a form sent twice from two forms.

    A form that comes back because of its key has another, so that it can be sent again.
    """

    def __init__(self) -> None:
        super().__init__(
            r"^[0-9a-f]{32}\Z",
            widget=forms.HiddenInput,
            initial=new_key,
            error_messages={"required": INCOMPLETE, "invalid": INCOMPLETE},
        )
        self.used = False

    def bound_data(self, data: Any, initial: Any) -> Any:
        return new_key() if self.used or not self.regex.match(data or "") else data


def refuse_used(form: forms.Form) -> None:
    """Say that the key of a form has kept something else, and give it another."""
    field = form.fields["key"]
    if isinstance(field, KeyField):
        field.used = True
    form.add_error("key", SENT_BEFORE)


class LongTextField(TextField):
    """A text of a few lines: line breaks may stand in it."""

    widget = forms.Textarea(attrs={"rows": 4})

    def __init__(self, **options: Any) -> None:
        super().__init__(max_length=LONGEST_TEXT, **options)

    def validate(self, value: str) -> None:
        super().validate(value)
        refuse_unseen(value.replace("\r", "").replace("\n", " ").replace("\t", " "))
