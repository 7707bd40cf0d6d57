"""Rows that are added and never changed: what was decided stays as it was that day."""

from typing import Any, TypeVar

from django.db import models

Row = TypeVar("Row", bound=models.Model)


class AppendOnlyError(TypeError):
    """Somebody tried to change a row that is only ever added."""


class AppendOnlyQuerySet(models.QuerySet[Row]):
    def update(self, **fields: Any) -> int:
        raise AppendOnlyError("These rows are never changed.")

    def delete(self) -> tuple[int, dict[str, int]]:
        raise AppendOnlyError("These rows are deleted with their person only.")


class AppendOnly(models.Model):
    """A row that can be saved once."""

    class Meta:
        abstract = True

    def save(self, *args: Any, **kwargs: Any) -> None:
        if not self._state.adding:
            raise AppendOnlyError("These rows are never changed.")
        super().save(*args, **kwargs)
