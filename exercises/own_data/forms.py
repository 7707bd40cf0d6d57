"""What has to be typed before somebody is deleted."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from course.cohorts.fields import PasswordField, TitleField
from course.cohorts.visible import as_seen


class PasswordAgainForm(forms.Form):
    password = PasswordField(label="Your password", autocomplete="current-password")


class NameAgainForm(forms.Form):
    """The learner's name, so that nobody deletes one they did not mean."""

    name = TitleField(
        label="The learner’s name, to be sure",
        widget=forms.TextInput(attrs={"autocomplete": "off"}),
    )

    def __init__(self, *args: Any, name: str, **options: Any) -> None:
        super().__init__(*args, **options)
        self.wanted = name

    def clean_name(self) -> str:
        name: str = self.cleaned_data["name"]
        if as_seen(name).casefold() != as_seen(self.wanted).casefold():
            raise ValidationError("This is not their name. Nothing is deleted.")
        return name
