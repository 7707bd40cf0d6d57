"""Summaries stay what the attempts come to, in whatever order things happen."""

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from io import StringIO
from random import Random
from threading import Barrier
from uuid import uuid4

import pytest
from django.core.management import CommandError, call_command
from django.db import connection
from django.test.utils import CaptureQueriesContext
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.mastery.progress import is_held, unbroken
from exercises.models import Asked, Attempt, Sitting, Summary
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import next_question, start
from exercises.practice.to_answer import to_answer
from exercises.reviews.verbs import Said, review
from exercises.standing.scores import row_in_words
from exercises.standing.summaries import COLUMNS, differing, outdated, rebuild
from exercises.standing.working_out import worked_out
from tests.answers import right_answer, wrong_answer

DRILLS = ("choose-the-mode", "care-and-safety", "free-answer")
NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)


def answer(person: Person, drill: str, *, right: bool, now: datetime | None = None) -> Attempt:
    asked = ask(person, KINDS[drill], now=now)
    by_hand = asked.kind.by_hand
    given = right_answer(asked) if right or by_hand else wrong_answer(asked)
    return submit(asked, given, now=now)


def score(by: Person, attempt: Attempt, hundredths: int) -> None:
    said = Said(what="score", text="As I see it.", score=hundredths, key=uuid4().hex)
    review(by, attempt, said)


def kept(person: Person) -> dict[str, object]:
    summary = Summary.objects.get(pk=person.pk)
    return {name: getattr(summary, name) for name in COLUMNS}


@pytest.mark.parametrize("seed", range(6))
def test_any_order_of_answers_and_scores_comes_to_the_same(
    seed: int, ines: Person, mina: Person, harbour: Cohort
) -> None:
    draw = Random(seed)
    attempts: list[Attempt] = []
    for _ in range(25):
        if attempts and draw.random() < 0.35:
            score(ines, draw.choice(attempts), draw.choice([0, 40, 100]))
        else:
            now = NOON + timedelta(hours=draw.randrange(500))
            right = draw.random() < 0.5
            attempts.append(answer(mina, draw.choice(DRILLS), right=right, now=now))
        assert kept(mina) == worked_out(mina.pk)


def test_what_waits_for_an_instructor_does_not_count(ines: Person, mina: Person) -> None:
    attempt = answer(mina, "free-answer", right=True)
    assert kept(mina)["answers"] == 0

    score(ines, attempt, 100)

    assert kept(mina)["answers"] == 1


def test_attempt_and_summary_are_written_together(
    mina: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*arguments: object, **named: object) -> None:
        raise RuntimeError("the machine stopped here")

    asked = ask(mina, KINDS["care-and-safety"])
    monkeypatch.setattr("exercises.practice.attempts.take_in", broken)
    with pytest.raises(RuntimeError):
        submit(asked, right_answer(asked))

    assert not Attempt.objects.exists()


@pytest.mark.django_db(transaction=True)
def test_answers_at_once_lose_nothing(mina: Person) -> None:
    questions = [ask(mina, KINDS[drill]) for drill in ("choose-the-mode", "care-and-safety")]
    together = Barrier(len(questions))

    def send(number: int) -> None:
        together.wait()
        try:
            submit(questions[number], right_answer(questions[number]))
        finally:
            connection.close()

    with ThreadPoolExecutor(len(questions)) as threads:
        list(threads.map(send, range(len(questions))))

    assert kept(mina)["answers"] == len(questions)
    assert kept(mina) == worked_out(mina.pk)


def test_answer_costs_as_many_queries_as_ever(
    mina: Person, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    answer(mina, "care-and-safety", right=True)
    for _ in range(2):
        asked = to_answer(mina, ask(mina, KINDS["care-and-safety"]).token)
        given = right_answer(asked)
        # savepoint, attempt, summary, savepoint
        with django_assert_num_queries(4):
            submit(asked, given)


def test_answer_reads_no_earlier_ones(mina: Person) -> None:
    answer(mina, "choose-the-mode", right=True)
    asked = to_answer(mina, ask(mina, KINDS["care-and-safety"]).token)
    given = right_answer(asked)
    with CaptureQueriesContext(connection) as queries:
        submit(asked, given)

    assert not [each for each in queries if 'FROM "exercises_attempt"' in each["sql"]]


@pytest.mark.parametrize("seed", range(4))
def test_row_is_told_as_the_history_of_the_drill_tells_it(
    seed: int, ines: Person, mina: Person, harbour: Cohort
) -> None:
    draw = Random(seed)
    attempts: list[Attempt] = []
    for _ in range(20):
        if attempts and draw.random() < 0.2:
            score(ines, draw.choice(attempts), draw.choice([0, 100]))
        attempts.append(answer(mina, draw.choice(DRILLS), right=draw.random() < 0.7))
        assert row_in_words(attempts[-1]) == row_by_history(attempts[-1].pk)


def row_by_history(pk: int) -> str:
    """Worked out from all answers to the drill, latest first, with nothing carried along."""
    attempt = Attempt.objects.get(pk=pk)
    if attempt.result.waits:
        return ""
    same = Attempt.objects.filter(person=attempt.person, drill=attempt.drill, pk__lte=pk)
    rights = [each.result.right for each in same.order_by("-pk") if not each.result.waits]
    row = unbroken(rights)
    if is_held(rights[1:]):
        return ""
    if row >= 3:
        return "Held: three right answers without a miss."
    if not row:
        return "Not held yet: it takes three right answers without a miss."
    return f"Not held yet: {row} right without a miss, {3 - row} to go."


def test_answer_that_was_read_before_a_score_does_not_undo_it(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    scored = answer(mina, "free-answer", right=True)
    asked = Asked.objects.select_related("person__summary").get(
        pk=ask(mina, KINDS["care-and-safety"]).pk
    )
    score(ines, scored, 100)

    submit(asked, right_answer(asked))

    assert kept(mina)["answers"] == 2
    assert kept(mina) == worked_out(mina.pk)


def test_first_answer_of_all_is_not_first_where_the_summary_is_missing(mina: Person) -> None:
    answer(mina, "choose-the-mode", right=True)
    asked = to_answer(mina, ask(mina, KINDS["care-and-safety"]).token)
    Summary.objects.all().delete()
    asked = to_answer(mina, asked.token)

    submit(asked, right_answer(asked))

    assert kept(mina) == worked_out(mina.pk)


@pytest.mark.django_db(transaction=True)
def test_first_answers_at_once_lose_nothing(mina: Person) -> None:
    questions = [ask(mina, KINDS[drill]) for drill in ("choose-the-mode", "care-and-safety")]
    read = [to_answer(mina, asked.token) for asked in questions]

    for asked in read:  # both were read before either was answered
        submit(asked, right_answer(asked))

    assert kept(mina)["answers"] == 2
    assert kept(mina) == worked_out(mina.pk)


def test_answers_of_the_last_minute_are_kept_and_no_others(mina: Person) -> None:
    for seconds in (0, 50, 70, 90):
        answer(mina, "free-answer", right=True, now=NOON + timedelta(seconds=seconds))

    expected = [(NOON + timedelta(seconds=each)).isoformat() for each in (90, 70, 50)]
    assert kept(mina)["given"] == expected


def test_command_proves_what_sittings_count(mina: Person) -> None:
    sitting = start(mina, ["care-and-safety"], 5)
    asked = next_question(sitting)
    assert asked
    submit(asked, right_answer(asked))
    assert list(differing([mina.pk])) == []
    Sitting.objects.update(answered=3)

    assert list(differing([mina.pk])) == [(mina.pk, ["sittings"])]
    rebuild([mina.pk])
    assert Sitting.objects.get().answered == 1


def command(*arguments: str) -> str:
    out = StringIO()
    call_command("summaries", *arguments, stdout=out)
    return out.getvalue()


def test_command_proves_and_mends(mina: Person, tom: Person) -> None:
    for person in (mina, tom):
        answer(person, "care-and-safety", right=True)
    Summary.objects.filter(pk=tom.pk).update(steady=3)

    assert list(differing([mina.pk, tom.pk])) == [(tom.pk, ["steady"])]
    with pytest.raises(CommandError, match="1 of 2 summaries are wrong"):
        command()
    assert command("--rebuild").splitlines() == [
        "Made 2 summaries anew.",
        "2 summaries are what the attempts come to.",
    ]


def test_rebuild_makes_what_is_missing(mina: Person) -> None:
    answer(mina, "care-and-safety", right=True)
    before = kept(mina)
    Summary.objects.all().delete()

    rebuild([mina.pk])

    assert kept(mina) == before


def test_who_needs_a_summary_by_these_rules(mina: Person, tom: Person, solo: Person) -> None:
    for person in (mina, tom):
        answer(person, "care-and-safety", right=True)
    assert outdated() == []

    Summary.objects.filter(pk=mina.pk).delete()
    Summary.objects.filter(pk=tom.pk).update(rules=0)

    assert outdated() == sorted([mina.pk, tom.pk])
    rebuild(outdated())
    assert outdated() == []


def test_next_answer_brings_a_summary_by_other_rules_in_step(mina: Person) -> None:
    for drill in ("choose-the-mode", "care-and-safety"):
        answer(mina, drill, right=True)
    Summary.objects.filter(pk=mina.pk).update(rules=0, skills={}, answers=0)
    assert list(differing([mina.pk])) == [(mina.pk, ["skills", "answers", "rules"])]

    answer(mina, "care-and-safety", right=False)

    assert list(differing([mina.pk])) == []
