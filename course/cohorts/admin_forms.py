"""The forms of the administrators' pages about people."""

from typing import Any

from django import forms
from django.contrib.admin.widgets import AdminTextInputWidget
from django.contrib.auth.forms import AdminPasswordChangeForm, BaseUserCreationForm

from course.cohorts.fields import SignInNameField, TitleField
from course.cohorts.limits import forget_failures
from course.cohorts.models import Person


class PersonForm(forms.ModelForm):  # type: ignore[type-arg]
    """A person, without the password: that has a page of its own."""

    name = TitleField(widget=AdminTextInputWidget)

    class Meta:
        model = Person
        fields = ["name", "sign_in_name", "email", "role", "is_active"]
        field_classes = {"sign_in_name": SignInNameField}


class NewPersonForm(BaseUserCreationForm):  # type: ignore[type-arg]
    name = TitleField(widget=AdminTextInputWidget)

    class Meta:
        model = Person
        fields = ["name", "sign_in_name", "email", "role"]
        field_classes = {"sign_in_name": SignInNameField}


class SetPasswordForm(AdminPasswordChangeForm):  # type: ignore[type-arg]
    """A new password for somebody; their failures to sign in are forgotten."""

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        # There is no other way in here than a password, so none to leave it off for.
        self.fields.pop("usable_password", None)
        for field in self.fields.values():
            field.required = True

    def save(self, commit: bool = True) -> Person:
        person: Person = super().save(commit)
        forget_failures(person.sign_in_name)
        return person
