"""The lines of a roster, with each cell fit for an account or refused with a reason."""

from collections.abc import Iterable
from dataclasses import dataclass

from django import forms
from django.core.exceptions import ValidationError

from course.cohorts.fields import SignInNameField, TitleField
from course.cohorts.models import Person
from course.cohorts.roster.sheet import Row

FIELDS: dict[str, forms.Field] = {
    "name": TitleField(error_messages={"required": "There is no name in this line."}),
    "e-mail": forms.EmailField(
        required=False,
        max_length=254,
        error_messages={"invalid": "“%(value)s” is not an e-mail address."},
    ),
    "cohort": TitleField(required=False),
    "sign-in name": SignInNameField(
        required=False,
        max_length=150,
        validators=Person._meta.get_field("sign_in_name").validators,
    ),
}


@dataclass(frozen=True)
class Line:
    """Somebody to be in a cohort; what a cell left out is empty."""

    number: int
    name: str
    email: str
    cohort: str
    sign_in_name: str
    refused: str = ""


def lines_of(rows: Iterable[Row]) -> list[Line]:
    return [line_of(row) for row in rows]


def line_of(row: Row) -> Line:
    reasons = ["This line has more cells than the first line has columns."] if row.too_long else []
    clean: dict[str, str] = {}
    for column, field in FIELDS.items():
        value = row.cells[column]
        try:
            clean[column] = str(field.clean(value))
        except ValidationError as error:
            clean[column] = value
            reasons += [message.replace("%(value)s", value) for message in error.messages]
    name, email, cohort, sign_in_name = (clean[column] for column in FIELDS)
    return Line(row.number, name, email, cohort, sign_in_name, refused=" ".join(reasons))
