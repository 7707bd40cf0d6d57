"""Fields that several forms of practice share."""

import secrets
from typing import Any

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TextField, refuse_unseen

LONGEST_TEXT = 2000


def new_key() -> str:
    return secrets.token_hex(16)


class KeyField(forms.RegexField):
    """Hidden; tells a form sent twice from two forms."""

    def __init__(self) -> None:
        super().__init__(
            r"^[0-9a-f]{32}\Z",
            widget=forms.HiddenInput,
            initial=new_key,
            error_messages=SAID_PLAINLY,
        )


class LongTextField(TextField):
    """A text of a few lines: line breaks may stand in it."""

    widget = forms.Textarea(attrs={"rows": 4})

    def __init__(self, **options: Any) -> None:
        super().__init__(max_length=LONGEST_TEXT, **options)

    def validate(self, value: str) -> None:
        super().validate(value)
        refuse_unseen(value.replace("\r", "").replace("\n", " ").replace("\t", " "))
