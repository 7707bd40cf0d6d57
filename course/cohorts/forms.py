"""Everything typed about people and cohorts passes one of these."""

from datetime import date, timedelta
from typing import Any, cast

from django import forms
from django.conf import settings
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.db.models import QuerySet
from django.forms import ModelChoiceField
from django.utils import timezone

from course.cohorts.fields import (
    SAID_PLAINLY,
    PasswordField,
    SignInNameField,
    TextField,
    TitleField,
)
from course.cohorts.models import Cohort, Person

TEN_YEARS = timedelta(days=3650)
SENDS_NOTHING = "The site sends nothing."
WRITES = "The site writes to it when something new is on Today; leave it out for no e-mail."


class SignInForm(forms.Form):
    sign_in_name = SignInNameField(label="Sign-in name", max_length=150)
    password = PasswordField(autocomplete="current-password")


class NewPasswordForm(forms.Form):
    """A new password, typed twice, fit for `person`."""

    new_password = PasswordField(
        label="New password",
        autocomplete="new-password",
        help_text="At least 10 characters. Three or four unconnected words do well.",
    )
    again = PasswordField(label="New password again", autocomplete="new-password")

    def __init__(self, *args: Any, person: Person, **options: Any) -> None:
        super().__init__(*args, **options)
        self.person = person

    def clean_new_password(self) -> str:
        password: str = self.cleaned_data["new_password"]
        validate_password(password, self.person)
        return password

    def clean_again(self) -> str:
        again: str = self.cleaned_data["again"]
        if again != self.cleaned_data.get("new_password", again):
            raise ValidationError("The two passwords are not the same. Type both again.")
        return again


class ChangePasswordForm(NewPasswordForm):
    current_password = PasswordField(label="Your password now", autocomplete="current-password")

    field_order = ["current_password", "new_password", "again"]


def name_field() -> TitleField:
    return TitleField(
        label="Your name",
        help_text="As your instructor knows you.",
        widget=forms.TextInput(attrs={"autocomplete": "name"}),
    )


def email_field() -> forms.EmailField:
    return forms.EmailField(
        label="E-mail (you may leave this out)",
        required=False,
        max_length=254,
        error_messages=SAID_PLAINLY | {"invalid": "This is not an e-mail address."},
        help_text="Your instructor can see it. "
        + (WRITES if settings.SENDS_MAIL else SENDS_NOTHING),
        widget=forms.EmailInput(attrs={"autocomplete": "email"}),
    )


class DetailsForm(forms.Form):
    """What people say about themselves."""

    name = name_field()
    email = email_field()


class InWordsForm(forms.Form):
    """Whether pictures and sounds are to be described instead."""

    in_words = forms.BooleanField(required=False)


class AccountForm(NewPasswordForm):
    """A new account. Whether its sign-in name is free shows when it is made, not before."""

    name = name_field()
    sign_in_name = SignInNameField(
        label="Sign-in name",
        validators=Person._meta.get_field("sign_in_name").validators,
        help_text="Letters, figures and . _ - @, without spaces. Capitals don’t matter.",
    )
    email = email_field()

    field_order = ["name", "email", "sign_in_name", "new_password", "again"]

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, person=Person(), **options)
        self.fields["new_password"].label = "Password"
        self.fields["again"].label = "Password again"

    def clean_new_password(self) -> str:
        for said in ("name", "email", "sign_in_name"):  # a password must not be like them
            setattr(self.person, said, self.cleaned_data.get(said, ""))
        return super().clean_new_password()


class CodeForm(forms.Form):
    code = TextField(
        label="Joining code",
        max_length=60,
        help_text="Your instructor has it. Capitals, spaces and dashes don’t matter.",
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "characters"}),
    )


class MoveForm(forms.Form):
    """Which of `cohorts` to move somebody to."""

    cohort = forms.ModelChoiceField(
        Cohort.objects.none(),
        label="To",
        empty_label=None,
        error_messages={
            "required": "Choose a cohort.",
            "invalid_choice": "You teach no such cohort. Choose one of the list.",
        },
    )

    def __init__(self, *args: Any, cohorts: QuerySet[Cohort], **options: Any) -> None:
        super().__init__(*args, **options)
        cast("ModelChoiceField[Cohort]", self.fields["cohort"]).queryset = cohorts


class FellowForm(forms.Form):
    sign_in_name = SignInNameField(
        label="Sign-in name of another instructor",
        max_length=150,
        help_text="They see and do in this cohort all that you do.",
    )


class AgreementForm(forms.Form):
    """An answer to an instructor who asks to make a link."""

    answer = forms.ChoiceField(
        choices=[("agree", "I agree"), ("refuse", "I don’t agree")],
        error_messages={"required": "Say which.", "invalid_choice": "Say which."},
    )


class CodeEndForm(forms.Form):
    """The last day on which a joining code works; empty for no end."""

    last_day = forms.DateField(
        label="Last day (empty: no end)",
        required=False,
        error_messages={"invalid": "Give the day as 2026-05-31."},
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
    )

    def clean_last_day(self) -> date | None:
        day: date | None = self.cleaned_data["last_day"]
        if day and day < timezone.localdate():
            raise ValidationError("This day has passed. Choose today or a later one.")
        if day and day > timezone.localdate() + TEN_YEARS:
            raise ValidationError("Choose a day within the next ten years.")
        return day


class ArchiveForm(forms.Form):
    """The day on which an archived cohort is removed; empty for never."""

    remove_on = forms.DateField(
        label="Remove it on (empty: keep it)",
        required=False,
        error_messages={"invalid": "Give the day as 2026-05-31."},
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
    )

    def clean_remove_on(self) -> date | None:
        day: date | None = self.cleaned_data["remove_on"]
        if day and not timezone.localdate() < day <= timezone.localdate() + TEN_YEARS:
            raise ValidationError("Choose a later day than today, within the next ten years.")
        return day


class CohortForm(forms.Form):
    name = TitleField(
        label="Name of the cohort", help_text="As its learners know it: “Harbour group”."
    )
