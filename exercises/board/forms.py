"""What an instructor wants to see of a board. It comes in the address."""

from typing import Any

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TextField
from exercises.board.reads import BoardWanted
from exercises.mastery.states import State
from exercises.standing.scores import practised_skills

SORTS = (
    ("name", "Name"),
    ("last", "Longest without practice"),
    ("stuck", "Most skills stuck"),
    ("weakest", "Weakest skill"),
    ("steady", "Fewest skills steady"),
)
SHOWS = (("", "Everybody"), ("idle", "Who is idle"), ("stuck", "Who is stuck"))
DAYS = 7


def unknown(what: str) -> dict[str, str]:
    return {"invalid_choice": f"There is no such {what}. Choose from the list."}


class BoardForm(forms.Form):
    show = forms.ChoiceField(
        label="Show", choices=SHOWS, required=False, error_messages=unknown("choice")
    )
    sort = forms.ChoiceField(
        label="In order of", choices=SORTS, required=False, error_messages=unknown("order")
    )
    skill = forms.ChoiceField(label="Skill", required=False, error_messages=unknown("skill"))
    state = forms.ChoiceField(label="Stands as", required=False, error_messages=unknown("state"))
    name = TextField(label="Name has", required=False, max_length=120)
    idle_days = forms.IntegerField(
        label="Idle after days",
        required=False,
        min_value=1,
        max_value=365,
        widget=forms.NumberInput(attrs={"placeholder": DAYS}),
        error_messages=SAID_PLAINLY
        | {
            "invalid": "Write a whole number of days.",
            "min_value": "At least 1 day.",
            "max_value": "At most 365 days.",
        },
    )

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        skills = [(skill.slug, skill.title) for skill in practised_skills()]
        states = [(state.value, state.value.replace("-", " ")) for state in State]
        self.fields["skill"].choices = [("", "Any"), *skills]  # type: ignore[attr-defined]
        self.fields["state"].choices = [("", "Any"), *states]  # type: ignore[attr-defined]

    def wanted(self, *, page: str, whole: bool) -> BoardWanted:
        """What was asked for; everybody by name, where something in it is wrong."""
        chosen = self.cleaned_data if self.is_valid() else {}
        return BoardWanted(
            sort=chosen.get("sort") or "name",
            show=chosen.get("show", ""),
            skill=chosen.get("skill", ""),
            state=chosen.get("state", ""),
            name=chosen.get("name", ""),
            idle_days=chosen.get("idle_days") or DAYS,
            page=page,
            whole=whole,
        )
