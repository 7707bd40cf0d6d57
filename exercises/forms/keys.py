"""A form's own key: what was sent twice counts once, and what says something else is refused."""

from typing import TypeVar

from django.db import models

Row = TypeVar("Row", bound=models.Model)


class SentBeforeError(Exception):
    """The form was sent before and said something else, which is kept; this is not."""


def first_of(made: Row, *said: str) -> Row:
    """The row for which the key of `made` was used, where it has the same in the columns `said`.

    Call it while handling the IntegrityError of saving `made`. Raises SentBeforeError; the
    IntegrityError again, where it is not the key that was there before.
    """
    first = type(made)._default_manager.filter(key=made.key).first()  # type: ignore[attr-defined]
    if first is None:
        raise
    if any(getattr(first, column) != getattr(made, column) for column in said):
        raise SentBeforeError
    return first
