"""What an instructor writes when signing off, and what a stranger types from a card."""

import secrets
from typing import Any

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TextField, TitleField, refuse_unseen
from exercises.models import SignOff
from exercises.sign_offs import Decision

LONGEST_NOTE = 2000


def new_key() -> str:
    return secrets.token_hex(16)


class LongTextField(TextField):
    """A text of a few lines: line breaks may stand in it."""

    widget = forms.Textarea(attrs={"rows": 4})

    def __init__(self, **options: Any) -> None:
        super().__init__(max_length=LONGEST_NOTE, **options)

    def validate(self, value: str) -> None:
        super().validate(value)
        refuse_unseen(value.replace("\r", "").replace("\n", " ").replace("\t", " "))


class SignOffForm(forms.Form):
    state = forms.ChoiceField(
        label="Your decision",
        choices=SignOff.State.choices,
        widget=forms.RadioSelect,
        error_messages={"required": "Choose one of the three.", "invalid_choice": "Choose one."},
    )
    bench = TitleField(label="For which bench", help_text="As it stands on the card.")
    note = LongTextField(
        label="Note (you may leave this out)",
        required=False,
        help_text="The learner can read it. Conditions belong here: “with me in the room”.",
    )
    key = forms.RegexField(
        r"^[0-9a-f]{32}\Z", widget=forms.HiddenInput, initial=new_key, error_messages=SAID_PLAINLY
    )

    def decision(self) -> Decision:
        """Valid forms only."""
        return Decision(**self.cleaned_data)


class WithdrawalForm(forms.Form):
    reason = LongTextField(
        label="Why", help_text="The learner can read it. The card’s own page does not show it."
    )


class CardCodeForm(forms.Form):
    code = TextField(
        label="Code on the card",
        max_length=60,
        help_text="Capitals, spaces and dashes don’t matter.",
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "characters"}),
    )
