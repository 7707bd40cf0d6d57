"""Marks, and the edit itself."""

from django import forms

from exercises.bench.forms.base import NO_NUMBER, HandsForm, TimeField
from exercises.drills.asks import Json

WHICH = {
    "required": "Say which mark.",
    "invalid_choice": "An edit has three marks: source in, source out, master in.",
}
MARKS = [("source_in", "Source in"), ("source_out", "Source out"), ("master_in", "Master in")]


class MarkForm(HandsForm):
    """Where the machine stands, where no time is typed."""

    action = "mark"
    which = forms.ChoiceField(choices=MARKS, error_messages=WHICH)
    at = TimeField(required=False)


class UnmarkForm(HandsForm):
    action = "unmark"
    which = forms.ChoiceField(choices=MARKS, error_messages=WHICH)


class RehearseForm(HandsForm):
    action = "rehearse"


class RecordForm(HandsForm):
    action = "record"


class StopForm(HandsForm):
    action = "stop"
    seconds = forms.IntegerField(
        min_value=1,
        max_value=600,
        error_messages={
            "required": NO_NUMBER,
            "invalid": NO_NUMBER,
            "min_value": "Stop it after 1 to 600 seconds.",
            "max_value": "Stop it after 1 to 600 seconds.",
        },
    )

    def arguments(self) -> Json:
        return {"after": self.cleaned_data["seconds"] * self.bench.rate.nominal}


class LookBackForm(HandsForm):
    action = "look-back"


class HandInForm(HandsForm):
    action = "hand-in"


class HintForm(HandsForm):
    action = "hint"
    depth = forms.ChoiceField(
        choices=[("what", "What"), ("why", "Why"), ("how", "How")],
        error_messages={
            "required": "Say what you want to know.",
            "invalid_choice": "A hint says what to do next, then why, then how.",
        },
    )
