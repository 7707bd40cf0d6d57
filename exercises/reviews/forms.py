"""What an instructor says of an attempt, and what the learner replies."""

from typing import Any

from django import forms

from exercises.forms.fields import KeyField, LongTextField
from exercises.models import Review
from exercises.reviews.verbs import RIGHT, Said

# What may be done, and the score that it gives; "partly" asks for it.
SCORES = {"right": RIGHT, "not-right": 0}
ACTIONS = [
    ("comment", "Comment; the score stays"),
    ("right", "Right: 100 %"),
    ("partly", "Partly right"),
    ("not-right", "Not right: 0 %"),
    ("sent-back", "Send it back: a new question of the same situation"),
]


class ReviewForm(forms.Form):
    """`waits`: nobody has judged the answer yet, so that a first score needs no reason."""

    action = forms.ChoiceField(
        label="What you do",
        choices=ACTIONS,
        widget=forms.RadioSelect,
        error_messages={"required": "Choose one of these.", "invalid_choice": "Choose one."},
    )
    percent = forms.IntegerField(
        label="Per cent, if partly right",
        required=False,
        widget=forms.NumberInput(attrs={"min": 1, "max": 99, "inputmode": "numeric"}),
        error_messages={"invalid": "Write a whole number from 1 to 99."},
    )
    text = LongTextField(label="What you tell the learner", required=False)
    key = KeyField()

    def __init__(self, *args: Any, waits: bool, **options: Any) -> None:
        super().__init__(*args, **options)
        self.waits = waits
        first, other = "A first score may go without.", "An overruled score needs its reason."
        help_text = f"They can read it and reply once. {first if waits else other}"
        self.fields["text"].help_text = help_text

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or {}
        action, percent = cleaned.get("action"), cleaned.get("percent")
        if action == "partly" and "percent" not in self.errors and not 1 <= (percent or 0) <= 99:
            self.add_error("percent", "Write a whole number from 1 to 99.")
        first_score = self.waits and action in (*SCORES, "partly")
        if action and not cleaned.get("text") and "text" not in self.errors and not first_score:
            self.add_error("text", "Write what you tell the learner: the reason belongs here.")
        return cleaned

    def score(self) -> int | None:
        action = self.cleaned_data.get("action", "")
        return self.cleaned_data.get("percent") if action == "partly" else SCORES.get(action)

    def said(self) -> Said:
        """Valid forms only."""
        action, score = self.cleaned_data["action"], self.score()
        return Said(
            what=action if score is None else Review.What.SCORE,
            text=self.cleaned_data["text"],
            score=score,
            key=self.cleaned_data["key"],
        )


class ReplyForm(forms.Form):
    text = LongTextField(label="Your reply", help_text="You can reply once. It stays as it is.")
