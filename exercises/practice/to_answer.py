"""The question that somebody answers, with all that taking the answer reads, in one query.

`select_related` would read every column of every table and put the joins together anew for each
answer: a tenth of an answer's time. Here the query is put together once, and reads what an answer
needs. What is not among it is read when somebody looks at it, by one query more;
`test_answer_queries.py` counts them.
"""

from collections.abc import Iterator, Sequence
from copy import copy
from itertools import islice
from typing import Any, NamedTuple

from django.db import DEFAULT_DB_ALIAS
from django.db.models import Model
from django.db.models.expressions import RawSQL
from django.shortcuts import get_object_or_404

from course.cohorts.models import Person
from exercises.models import Asked, OwnDrill, OwnRevision, Sitting, Summary

# As text, for the same reason: another twentieth.
NO_ANSWER = """NOT EXISTS (
    SELECT 1 FROM exercises_attempt earlier WHERE earlier.person_id = exercises_asked.person_id
)"""


class Part(NamedTuple):
    """What is read of one table; `path` leads to it from the question. The key comes first."""

    model: type[Model]
    path: str
    columns: Sequence[str]

    def names(self) -> list[str]:
        return [f"{self.path}{column}" for column in self.columns]

    def made(self, values: Iterator[Any]) -> Any:
        """The row of the next values; None where the question has none such."""
        own = list(islice(values, len(self.columns)))
        if own[0] is None:
            return None
        return self.model.from_db(DEFAULT_DB_ALIAS, self.columns, own)


def columns_of(model: type[Model]) -> list[str]:
    return [field.attname for field in model._meta.concrete_fields]


PARTS = (
    Part(Asked, "", columns_of(Asked)),
    Part(Sitting, "sitting__", ["id", "token", "length", "answered", "ended_at"]),
    Part(OwnRevision, "own__", columns_of(OwnRevision)),
    Part(OwnDrill, "own__drill__", ["id", "form", "published_id", "retired_at"]),
    Part(
        Summary,
        "person__summary__",
        ["person_id", "skills", "recent", "rows", "given", "version", "rules"],
    ),
)
NAMES = [name for part in PARTS for name in part.names()]
READ = Asked.objects.annotate(
    first=RawSQL(NO_ANSWER, ())  # noqa: S611 - a fixed text
).values_list(*NAMES, "first")


def to_answer(person: Person, token: str) -> Asked:
    """The person's question, or 404; its `first` says that they have answered nothing yet."""
    values = iter(get_object_or_404(READ, person=person, token=token))
    asked, sitting, own, drill, summary = (part.made(values) for part in PARTS)
    asked.first = next(values)
    asked.person = copy(person)  # what is read with one question belongs to no other
    Person._meta.get_field("summary").set_cached_value(asked.person, summary)
    asked.sitting, asked.own = sitting, own
    if own:
        own.drill = drill
    return asked  # type: ignore[no-any-return]
