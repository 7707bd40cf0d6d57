"""A bench sheet as it is filled in, at the machine and in under two minutes."""

from datetime import timedelta
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils import timezone

from exercises.bench.sheets import SheetSaid
from exercises.forms.fields import KeyField, LongTextField
from exercises.worktop.habits import HABITS

LONG_AGO = timedelta(days=366)
ANSWERS = [("yes", "Yes"), ("no", "No"), ("", "Not this time")]


class BenchSheetForm(forms.Form):
    day = forms.DateField(
        label="Which day",
        initial=timezone.localdate,
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        error_messages={"required": "Say which day.", "invalid": "Type a day: 2027-03-09."},
    )
    edits = forms.IntegerField(
        label="How many edits",
        min_value=0,
        max_value=500,
        widget=forms.NumberInput(attrs={"inputmode": "numeric"}),
        error_messages={
            "required": "Type a whole number.",
            "invalid": "Type a whole number.",
            "min_value": "From 0 to 500.",
            "max_value": "From 0 to 500.",
        },
    )
    wrong = LongTextField(label="What went wrong (you may leave this out)", required=False)
    key = KeyField()

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        for slug, title in HABITS.items():
            self.fields[slug] = forms.ChoiceField(
                label=title,
                choices=ANSWERS,
                required=False,
                initial="",
                widget=forms.RadioSelect,
                error_messages={"invalid_choice": "Choose one of the three."},
            )
        self.order_fields(["day", "edits", *HABITS, "wrong", "key"])

    def clean_day(self) -> Any:
        day, today = self.cleaned_data["day"], timezone.localdate()
        if not today - LONG_AGO <= day <= today:
            raise ValidationError("A day of the last year, up to today.")
        return day

    @property
    def habits(self) -> list[forms.BoundField]:
        return [self[slug] for slug in HABITS]

    def said(self) -> SheetSaid:
        """Valid forms only."""
        told = self.cleaned_data
        habits = {slug: told[slug] == "yes" for slug in HABITS if told[slug]}
        return SheetSaid(
            day=told["day"],
            edits=told["edits"],
            habits=habits,
            wrong=told["wrong"],
            key=told["key"],
        )
