"""How somebody begins a practical."""

from typing import Any

from django import forms

from exercises.worktop.practical import Practical, Way

WAYS = {
    Way.WATCH: "Watch it: every step is told before it is done",
    Way.FINISH: "Finish it: half is made, the rest is yours",
    Way.ALONE: "Alone",
}


class BeginForm(forms.Form):
    way = forms.ChoiceField(
        label="How",
        widget=forms.RadioSelect,
        error_messages={
            "required": "Choose how you want to do it.",
            "invalid_choice": "This practical is not done in that way.",
        },
    )

    def __init__(self, *args: Any, practical: Practical, **options: Any) -> None:
        super().__init__(*args, **options)
        ways = [(way.value, WAYS[way]) for way in Way if way in practical.ways]
        self.fields["way"].choices = ways  # type: ignore[attr-defined]
        self.fields["way"].initial = ways[0][0]

    def chosen(self) -> Way:
        return Way(self.cleaned_data["way"])
