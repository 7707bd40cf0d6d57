"""What an instructor writes when signing off, and what a stranger types from a card."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from course.cohorts.fields import TextField, TitleField
from course.cohorts.models import Person
from exercises.forms.fields import KeyField, LongTextField
from exercises.models import SignOff
from exercises.sign_offs.verbs import Decision


class SignOffForm(forms.Form):
    state = forms.ChoiceField(
        label="Your decision",
        choices=SignOff.State.choices,
        widget=forms.RadioSelect,
        error_messages={"required": "Choose one of the three.", "invalid_choice": "Choose one."},
    )
    bench = TitleField(label="For which bench", help_text="As it stands on the card.")
    note = LongTextField(
        label="Conditions (you may leave this out)",
        required=False,
        help_text="Whoever holds or checks the card reads them: “with me in the room”. Where the "
        "learner is not ready yet, say why: only the learner reads that.",
    )
    # The name that the instructor has read, and signs.
    named = forms.CharField(required=False, strip=False)
    key = KeyField()

    def __init__(self, *args: Any, learner: Person, **options: Any) -> None:
        super().__init__(*args, **options)
        self.learner = learner

    def clean_named(self) -> str:
        if self.cleaned_data["named"] != self.learner.name:
            raise ValidationError(
                f"This learner is called {self.learner.name} now, and was not when you opened "
                "this page. Sign only if that is whom you mean."
            )
        return self.learner.name

    def decision(self) -> Decision:
        """Valid forms only."""
        said = self.cleaned_data
        return Decision(
            state=said["state"], bench=said["bench"], note=said["note"], key=said["key"]
        )


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
