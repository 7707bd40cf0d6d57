"""What an instructor writes when signing off, and what a stranger types from a card."""

from django import forms

from course.cohorts.fields import TextField, TitleField
from exercises.forms.fields import KeyField, LongTextField
from exercises.models import SignOff
from exercises.sign_offs import Decision


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
    key = KeyField()

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
