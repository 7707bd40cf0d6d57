"""What a learner chooses before a sitting."""

from django import forms

from exercises.mastery.skills import SKILLS
from exercises.practice.sittings import LENGTHS
from exercises.standing.scores import practised_skills


class SittingForm(forms.Form):
    """Skills, or none so that the site chooses, and how many questions."""

    skills = forms.MultipleChoiceField(
        label="Skills",
        required=False,
        help_text="Tick some, or none: then the site takes what you have had right least.",
        widget=forms.CheckboxSelectMultiple,
        error_messages={
            "invalid_choice": "There is no such skill. Choose from the list.",
            "invalid_list": "Choose from the list.",
        },
    )
    length = forms.TypedChoiceField(
        label="How many questions",
        choices=[(length, str(length)) for length in LENGTHS],
        coerce=int,
        initial=LENGTHS[1],
        widget=forms.RadioSelect,
        error_messages={
            "required": "Choose how many questions.",
            "invalid_choice": f"Choose {', '.join(map(str, LENGTHS[:-1]))} or {LENGTHS[-1]}.",
        },
    )

    def __init__(self, *args: object, **options: object) -> None:
        super().__init__(*args, **options)  # type: ignore[arg-type]
        practised = {skill.slug for skill in practised_skills()}
        choices = [(slug, skill.title) for slug, skill in SKILLS.items() if slug in practised]
        self.fields["skills"].choices = choices  # type: ignore[attr-defined]
