"""What is known of a cohort, as tables to take away; each in a constant number of queries."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from course.cohorts.models import Cohort
from exercises.models import Attempt, SignOff
from exercises.standing.scores import Standing, practised_skills, standings

Row = Sequence[Any]
AT_ONCE = 2000


@dataclass(frozen=True)
class ResultTable:
    """A file to take away. Its rows are made as they are read, however many there are."""

    slug: str
    title: str
    header: Callable[[], Sequence[str]]
    rows: Callable[[Cohort], Iterator[Row]]


def attempts_header() -> Sequence[str]:
    return (
        "answered at",
        "name",
        "sign-in name",
        "drill",
        "skill",
        "situation",
        "result",
        "score in per cent",
        "seconds taken",
        "described in words",
        "points at",
    )


def attempts(cohort: Cohort) -> Iterator[Row]:
    """Every answer of the people who are in the cohort now, the earliest first."""
    found = (
        Attempt.objects.of_cohort(cohort)
        .with_standing()
        .select_related("person")
        .defer("feedback", "answer")
    )
    for attempt in found.order_by("pk").iterator(chunk_size=AT_ONCE):
        yield (
            attempt.answered_at.isoformat(timespec="seconds"),
            attempt.person.name,
            attempt.person.sign_in_name,
            attempt.kind.title,
            attempt.skill_title,
            attempt.situation,
            result(attempt),
            "" if attempt.result.waits else attempt.result.score,
            seconds(attempt),
            "yes" if attempt.described else "no",
            " ".join(attempt.misconceptions),
        )


def seconds(attempt: Attempt) -> int | str:
    taken = attempt.seconds_taken
    return "" if taken is None else round(taken)


def result(attempt: Attempt) -> str:
    if attempt.result.waits:
        return "sent back" if attempt.sent_back else "waits for the instructor"  # type: ignore[attr-defined]
    if attempt.result.right:
        return "right"
    return "partly right" if attempt.result.score else "not right"


def board_header() -> Sequence[str]:
    return ("name", "sign-in name", "last practice", *(s.title for s in practised_skills()))


def board(cohort: Cohort) -> Iterator[Row]:
    """Everybody with the mean of their last ten answers in each skill; blank: not practised."""
    people = list(cohort.learners.order_by("name", "pk"))
    found = standings(people)
    for person in people:
        own = found[person.pk]
        scores = (own[s.slug].score if s.slug in own else "" for s in practised_skills())
        yield (person.name, person.sign_in_name, last_practised(own.values()), *scores)


def last_practised(standings: Iterable[Standing]) -> str:
    last = max((each.last_practised for each in standings), default=None)
    return last.isoformat(timespec="seconds") if last else ""


def sign_offs_header() -> Sequence[str]:
    return (
        "signed at",
        "name as signed",
        "name",
        "sign-in name",
        "decided",
        "bench",
        "instructor",
        "note",
        "code",
        "withdrawn at",
        "withdrawn by",
        "reason",
    )


def sign_offs(cohort: Cohort) -> Iterator[Row]:
    """Every decision made in the cohort, the earliest first."""
    made = SignOff.objects.filter(cohort=cohort).order_by("pk").defer("evidence")
    for each in made.select_related("person", "withdrawal__by"):
        gone = each.withdrawal if each.is_withdrawn else None
        yield (
            each.at.isoformat(timespec="seconds"),
            each.person_name,
            each.person.name,
            each.person.sign_in_name,
            each.get_state_display(),
            each.bench,
            each.instructor_name,
            each.note,
            "" if each.person.is_deleted else each.code,
            gone.at.isoformat(timespec="seconds") if gone else "",
            gone.by.name if gone else "",
            gone.reason if gone else "",
        )


TABLES = {
    table.slug: table
    for table in (
        ResultTable("answers", "Every answer", attempts_header, attempts),
        ResultTable("board", "The board: people and skills", board_header, board),
        ResultTable("sign-offs", "Sign-offs, with what was withdrawn", sign_offs_header, sign_offs),
    )
}
