"""What an instructor writes of a drill of their own."""

from typing import Any

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TitleField
from course.cohorts.models import Cohort, Person
from exercises.desk.verbs import Text
from exercises.drills.asks import Json
from exercises.drills.own import PictureTask, WrittenTask
from exercises.forms.fields import KeyField, LongTextField
from exercises.models import OwnRevision
from exercises.standing.scores import practised_skills

LEAST, MOST = 20, 4000  # characters that an answer may be asked to have
WHOLE = SAID_PLAINLY | {
    "invalid": "Write a whole number.",
    "min_value": "At least %(limit_value)s.",
    "max_value": "At most %(limit_value)s.",
}


class OwnForm(forms.Form):
    """What every form of drill has."""

    title = TitleField(label="Title")
    skill = forms.ChoiceField(
        label="The skill that it practises",
        error_messages={"invalid_choice": "Choose one of the list.", **SAID_PLAINLY},
    )
    key = KeyField()
    template = "desk/write_plain.html"

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        skills = [(skill.slug, skill.title) for skill in practised_skills()]
        self.fields["skill"].choices = skills  # type: ignore[attr-defined]

    def spec(self) -> Json:
        raise TypeError(f"{type(self).__name__} does not say what it makes")

    def text(self) -> Text:
        """Valid forms only."""
        data = self.cleaned_data
        return Text(title=data["title"], skill=data["skill"], spec=self.spec())

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        """What would have been typed for a revision."""
        return {"title": revision.title, "skill": revision.skill}


class RubricField(LongTextField):
    """What the reader looks for, one thing a line."""

    def __init__(self) -> None:
        told = "One thing a line. Learners see it with the task."
        super().__init__(label="What you look for", help_text=told)

    def clean(self, value: Any) -> tuple[str, ...]:
        lines = (line.strip() for line in super().clean(value).splitlines())
        return tuple(line for line in lines if line)


class OwnTextForm(OwnForm):
    task = LongTextField(label="The task")
    rubric = RubricField()
    least = forms.IntegerField(
        label="Shortest answer, in characters",
        min_value=LEAST,
        max_value=MOST,
        initial=80,
        error_messages=WHOLE,
    )
    most = forms.IntegerField(
        label="Longest answer, in characters",
        min_value=LEAST,
        max_value=MOST,
        initial=2000,
        error_messages=WHOLE,
    )

    def clean_most(self) -> int:
        most: int = self.cleaned_data["most"]
        if most < self.cleaned_data.get("least", 0):
            raise forms.ValidationError("The longest answer can’t be shorter than the shortest.")
        return most

    def spec(self) -> Json:
        data = self.cleaned_data
        names = ("task", "rubric", "least", "most")
        return WrittenTask(**{name: data[name] for name in names}).as_json()

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        rubric = "\n".join(revision.spec["rubric"])
        typed: dict[str, Any] = super().typed(revision) | revision.spec | {"rubric": rubric}
        return typed


class OwnPictureForm(OwnForm):
    template = "desk/write_picture.html"

    task = LongTextField(
        label="The task", help_text="Ask for no picture that needs a cover opened or a hand inside."
    )
    rubric = RubricField()

    def spec(self) -> Json:
        return PictureTask(
            task=self.cleaned_data["task"], rubric=self.cleaned_data["rubric"]
        ).as_json()

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        spec = revision.spec
        return super().typed(revision) | {"task": spec["task"], "rubric": "\n".join(spec["rubric"])}


class PublishForm(forms.Form):
    cohorts = forms.MultipleChoiceField(
        label="Which cohorts are asked it",
        widget=forms.CheckboxSelectMultiple,
        required=False,
        error_messages={
            "invalid_choice": "Choose from your own cohorts.",
            "invalid_list": "Choose from your own cohorts.",
        },
    )

    def __init__(self, person: Person, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        self.taught = list(Cohort.objects.taught_by(person).current())
        choices = [(str(cohort.pk), cohort.name) for cohort in self.taught]
        self.fields["cohorts"].choices = choices  # type: ignore[attr-defined]

    def chosen(self) -> list[Cohort]:
        """Valid forms only."""
        return [each for each in self.taught if str(each.pk) in self.cleaned_data["cohorts"]]
