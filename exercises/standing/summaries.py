"""The verbs that keep summaries in step with attempts, and prove that they are.

A summary carries what the next answer has to know of those before it, so that an answer reads
none of them. What is written is worked out from the summary as it was read, and stands only where
nobody has changed it since. Otherwise, and whenever an instructor scores an answer, all of it is
worked out again from the attempts themselves, with its row locked: the order in which answers and
scores arrive makes no difference, and of two answers at once none is lost.
"""

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from django.db import IntegrityError, transaction
from django.db.models import Count, Exists, F, OuterRef, Q, QuerySet

from course.cohorts.models import Person
from exercises.mastery.states import RULES
from exercises.models import Attempt, Sitting, Summary
from exercises.standing.working_out import with_answer, worked_out

COLUMNS = (
    "skills",
    "answers",
    "last_practised",
    "steady",
    "stuck",
    "weakest",
    "weakest_score",
    "recent",
    "rows",
    "given",
)


def summary_of(person: Person) -> Summary | None:
    """Somebody's summary as it was read with them, or as it is now; the next time, read anew."""
    known: Summary | None = getattr(person, "summary", None)
    person._state.fields_cache.pop("summary", None)
    return known


def take_in(attempt: Attempt, known: Summary | None, *, first: bool = False) -> None:
    """Bring the summary in step with an answer, in the transaction that adds it.

    `known` is the summary as it was read before. Where there was none, `first` says that the
    person had not answered anything either.
    """
    if known is None and first:
        known = Summary(pk=attempt.person_id, rules=RULES)
    if known is None or known.rules != RULES or not kept(known, with_answer(known, attempt)):
        refresh(attempt.person_id)
    elif not attempt.pending:
        attempt.row_before = known.rows.get(attempt.drill, 0)


def kept(known: Summary, columns: dict[str, Any]) -> bool:
    """Write it, unless somebody else has changed it, or made it, since it was read."""
    if known._state.adding:
        return added(Summary(pk=known.pk, rules=known.rules, **columns))
    same = Summary.objects.filter(pk=known.pk, version=known.version)
    return bool(same.update(version=known.version + 1, **columns))


def added(summary: Summary) -> bool:
    """Add it, unless another answer at once has."""
    try:
        with transaction.atomic():
            summary.save(force_insert=True)
    except IntegrityError:
        return False
    return True


def refresh(person_id: int) -> None:
    """Work all of it out again. Within the transaction that changed what it says."""
    fill(locked(person_id))


def fill(summary: Summary) -> None:
    """Make all of it anew. It is locked."""
    summary.__dict__.update(worked_out(summary.person_id), rules=RULES)
    summary.version += 1
    summary.save()


def locked(person_id: int) -> Summary:
    """Somebody's summary, which nobody else changes until the transaction ends."""
    rows = Summary.objects.select_for_update()
    found = rows.filter(pk=person_id).first()
    if found is None:
        added(Summary(pk=person_id))
    return found or rows.get(pk=person_id)


def rebuild(people: Iterable[int]) -> int:
    """Make these people's summaries anew, each in its own transaction; how many there were.

    Safe while answers arrive: whoever answers waits for the row, or is waited for.
    """
    made = 0
    for person_id in people:
        with transaction.atomic():
            fill(locked(person_id))
            for sitting in miscounted(person_id):
                sitting.answered = sitting.given  # type: ignore[attr-defined]
                sitting.save(update_fields=["answered"])
        made += 1
    return made


def differing(people: Iterable[int]) -> Iterator[tuple[int, Sequence[str]]]:
    """People whose summary is not what their attempts come to, and the columns that differ.

    `sittings` stands for the answers that their sittings count.
    """
    for person_id in people:
        with transaction.atomic():
            found = locked(person_id)
            right = worked_out(person_id)
            sittings = miscounted(person_id).exists()
        columns = [name for name in COLUMNS if getattr(found, name) != right[name]]
        if found.rules != RULES:
            columns.append("rules")
        if sittings:
            columns.append("sittings")
        if columns:
            yield person_id, columns


def miscounted(person_id: int) -> QuerySet[Sitting]:
    """The sittings that count other answers than were given in them; with `given`, how many."""
    counted = Sitting.objects.filter(person=person_id).annotate(given=Count("asked__attempt"))
    return counted.exclude(answered=F("given"))


def who_has_answered() -> list[int]:
    """Everybody with an attempt or a summary."""
    with_attempts = Person.objects.filter(attempts__isnull=False)
    with_summary = Person.objects.filter(summary__isnull=False)
    return sorted(
        {*with_attempts.values_list("pk", flat=True), *with_summary.values_list("pk", flat=True)}
    )


def outdated() -> list[int]:
    """Everybody whose summary goes by other rules, or who should have one."""
    answered = Exists(Attempt.objects.filter(person=OuterRef("pk")))
    missing = Q(answered, summary=None)
    other = Q(summary__isnull=False) & ~Q(summary__rules=RULES)
    return list(Person.objects.filter(missing | other).order_by("pk").values_list("pk", flat=True))
