"""What an instructor asks for: a sitting, a lesson, or a bench practical."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils import timezone

from course.cohorts.fields import SAID_PLAINLY, TitleField
from course.cohorts.models import Cohort, Person
from course.lessons.shelf import shelf
from exercises.assignments.verbs import Terms
from exercises.drills.kind import Kind
from exercises.finding.kinds import kinds_to_set
from exercises.forms.fields import LongTextField
from exercises.models import Assignment
from exercises.standing.scores import practised_skills

MOST_QUESTIONS = 40
MOST_TRIES = 20
WHEN = SAID_PLAINLY | {"invalid": "Write a date and a time, such as 2026-05-04T18:00."}


def number_field(label: str, least: int, most: int, initial: int, help_text: str = "") -> Any:
    return forms.IntegerField(
        label=label,
        required=False,
        min_value=least,
        max_value=most,
        initial=initial,
        help_text=help_text,
        error_messages=SAID_PLAINLY
        | {
            "invalid": "Write a whole number.",
            "min_value": f"At least {least}.",
            "max_value": f"At most {most}.",
        },
    )


class WhenField(forms.DateTimeField):
    """A date and time in the workshop's time zone; refused where the clock skips it."""

    widget = forms.DateTimeInput(attrs={"type": "datetime-local"}, format="%Y-%m-%dT%H:%M")
    default_error_messages = WHEN

    def to_python(self, value: Any) -> Any:
        try:
            return super().to_python(value)
        except ValidationError as error:
            if error.code == "ambiguous_timezone":
                raise ValidationError(
                    "The clocks change there: this time comes twice or not at all. Choose another."
                ) from None
            raise


def choices_field(label: str, help_text: str) -> forms.MultipleChoiceField:
    return forms.MultipleChoiceField(
        label=label,
        required=False,
        help_text=help_text,
        widget=forms.CheckboxSelectMultiple,
        error_messages={"invalid_choice": "Choose from the list.", "invalid_list": "Choose."},
    )


def as_named(kind: Kind) -> str:
    return f"{kind.title} (you read the answers)" if kind.by_hand else kind.title


def practising(kinds: list[Kind], skills: list[str]) -> list[Kind]:
    """Those that practise one of the skills; all of them where none is named."""
    return [kind for kind in kinds if not skills or set(skills) & set(kind.skills)]


def all_own(kinds: list[Kind]) -> bool:
    return all(kind.own for kind in kinds)


class AssignmentForm(forms.Form):
    what = forms.ChoiceField(
        label="What you ask for",
        choices=Assignment.What.choices,
        initial=Assignment.What.DRILLS,
        widget=forms.RadioSelect,
        error_messages={"required": "Choose one of the three.", "invalid_choice": "Choose one."},
    )
    title = TitleField(label="Title", help_text="As learners read it on Today.")
    note = LongTextField(label="Note (you may leave this out)", required=False)
    kinds = choices_field("Kinds of drill", "None ticked: any that practise the skills.")
    skills = choices_field("Skills", "None ticked: any.")
    questions = number_field("Questions in a sitting", 1, MOST_QUESTIONS, 10)
    right_needed = number_field("Of them right", 1, MOST_QUESTIONS, 8)
    tries = number_field("Sittings that may be begun", 0, MOST_TRIES, 0, "0: as many as they like.")
    lesson = forms.ChoiceField(
        label="Lesson", required=False, error_messages={"invalid_choice": "Choose from the list."}
    )
    task = LongTextField(
        label="Task at the bench",
        required=False,
        help_text="What to do and what to bring. The learner writes a report, which waits for you.",
    )
    people = choices_field("For whom", "None ticked: the whole cohort, whoever joins later too.")
    opens_at = WhenField(label="Opens")
    due_at = WhenField(label="Due")

    def __init__(self, cohort: Cohort, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        self.learners = {str(one.pk): one for one in Person.objects.learning_in(cohort)}
        self.drills = kinds_to_set(cohort)
        named: dict[str, list[tuple[str, str]]] = {
            "kinds": [(slug, as_named(one)) for slug, one in self.drills.items()],
            "skills": [(skill.slug, skill.title) for skill in practised_skills()],
            "lesson": [("", "–"), *((each.slug, str(each)) for each in shelf().lessons)],
            "people": [(pk, one.name) for pk, one in self.learners.items()],
        }
        for name, choices in named.items():
            self.fields[name].choices = choices  # type: ignore[attr-defined]

    def clean(self) -> dict[str, Any]:
        cleaned: dict[str, Any] = super().clean() or self.cleaned_data
        checks = {
            Assignment.What.DRILLS: self.check_drills,
            Assignment.What.LESSON: self.check_lesson,
            Assignment.What.PRACTICAL: self.check_task,
        }
        if cleaned.get("what") in checks:
            checks[cleaned["what"]](cleaned)
        opens, due = cleaned.get("opens_at"), cleaned.get("due_at")
        if opens and due and due <= opens:
            self.add_error("due_at", "It is due before it opens. Choose a later time.")
        return cleaned

    def check_drills(self, cleaned: dict[str, Any]) -> None:
        questions, right = cleaned.get("questions"), cleaned.get("right_needed")
        if questions is None and "questions" not in self.errors:
            self.add_error("questions", "Say how many questions.")
        if right is None and "right_needed" not in self.errors:
            self.add_error("right_needed", "Say how many of them must be right.")
        if questions and right and right > questions:
            self.add_error("right_needed", f"A sitting has only {questions}.")
        chosen = [self.drills[slug] for slug in cleaned.get("kinds", [])]
        fitting = practising(chosen, cleaned.get("skills", []))
        if chosen and not fitting:
            self.add_error("kinds", "None of these drills practises any of these skills.")
        elif fitting and questions and questions > len(fitting) and all_own(fitting):
            found = f"only {len(fitting)}" if len(fitting) > 1 else "only one"
            self.add_error("questions", f"Your own drills have one question each: {found} here.")

    def check_lesson(self, cleaned: dict[str, Any]) -> None:
        if not cleaned.get("lesson") and "lesson" not in self.errors:
            self.add_error("lesson", "Choose a lesson.")

    def check_task(self, cleaned: dict[str, Any]) -> None:
        if not cleaned.get("task") and "task" not in self.errors:
            self.add_error("task", "Write what is to be done.")

    def terms(self) -> Terms:
        """Valid forms only: what belongs to another kind of assignment is left out."""
        chosen = self.cleaned_data
        drills = chosen["what"] == Assignment.What.DRILLS
        columns = {name: chosen[name] for name in ("what", "title", "note", "opens_at", "due_at")}
        columns |= {
            "kinds": chosen["kinds"] if drills else [],
            "skills": chosen["skills"] if drills else [],
            "questions": chosen["questions"] if drills else None,
            "right_needed": chosen["right_needed"] if drills else None,
            "tries": (chosen["tries"] or 0) if drills else 0,
            "lesson": chosen["lesson"] if chosen["what"] == Assignment.What.LESSON else "",
            "task": chosen["task"] if chosen["what"] == Assignment.What.PRACTICAL else "",
        }
        return Terms(columns=columns, people=[self.learners[pk] for pk in chosen["people"]])


def initial_of(assignment: Assignment) -> dict[str, Any]:
    """What stands in the form when an assignment is changed."""
    names = ("what", "title", "note", "kinds", "skills", "tries", "lesson", "task")
    given = {name: getattr(assignment, name) for name in (*names, "opens_at", "due_at")}
    given |= {"questions": assignment.questions or 10, "right_needed": assignment.right_needed or 8}
    return given | {"people": [str(pk) for pk in assignment.people.values_list("pk", flat=True)]}


class ExtensionForm(forms.Form):
    due_at = WhenField(label="New time for this learner")
    reason = LongTextField(label="Why (you may leave this out)", required=False)

    def __init__(self, assignment: Assignment, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        self.assignment = assignment

    def clean_due_at(self) -> Any:
        due_at = self.cleaned_data["due_at"]
        if due_at <= self.assignment.opens_at:
            at = timezone.localtime(self.assignment.opens_at)
            raise ValidationError(f"It opens only at {at:%H:%M on %-d %B}. Choose a later time.")
        return due_at
