"""Asking and answering: one question waits, one try is one attempt, nothing is lost."""

from dataclasses import replace

import pytest

from course.cohorts.equipping import set_figures
from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import AppendOnlyError, Asked, Attempt
from exercises.practice.attempts import OutdatedError, ask, submit
from tests.answers import right_answer, wrong_answer
from tests.threads import at_once

MODE = KINDS["choose-the-mode"]


def test_ask_twice_gives_the_same_question(mina: Person) -> None:
    first = ask(mina, MODE)

    assert ask(mina, MODE) == first


def test_ask_after_an_answer_gives_another_question(mina: Person) -> None:
    first = ask(mina, MODE)
    submit(first, right_answer(first))

    assert ask(mina, MODE) != first


def test_ask_same_seed_makes_the_same_question(mina: Person, tom: Person) -> None:
    assert ask(mina, MODE, seed=7).question == ask(tom, MODE, seed=7).question


def test_question_is_set_at_the_bench_of_the_cohort(mina: Person, harbour: Cohort) -> None:
    own = {"pre_roll": 9, "source_run_up": 10, "lock": 240, "relock": 30, "erase_gap": 60}
    set_figures(harbour.instructors.get(), harbour, {"name": "B", "line_system": "525", **own})
    kept = ask(mina, MODE, seed=4).question

    lock = kept["bench"]["settings"]["bench"]["lock"]
    assert kept["key"]["session"]["bench"]["lock"] == lock == 240


@pytest.mark.django_db(transaction=True)
def test_ask_in_parallel_makes_one_question(mina: Person) -> None:
    asked = at_once([lambda: ask(mina, MODE).pk] * 6)

    assert set(asked) == {Asked.objects.get().pk}


def test_submit_keeps_what_was_asked_and_answered(mina: Person) -> None:
    asked = ask(mina, MODE, seed=11)
    answer = wrong_answer(asked)

    attempt = submit(asked, answer)

    kept = Attempt.objects.get()
    verdict = MODE.grade(asked.as_question(), answer).as_told()
    assert kept == attempt
    assert (kept.person, kept.drill, kept.seed, kept.revision) == (
        mina,
        MODE.slug,
        11,
        MODE.revision,
    )
    assert (kept.answer, kept.right, kept.score) == (answer, False, verdict.score)
    assert kept.verdict.feedback == verdict.feedback
    assert kept.asked_at == asked.asked_at <= kept.answered_at


def test_submit_twice_keeps_the_first_answer(mina: Person) -> None:
    asked = ask(mina, MODE)
    first = submit(asked, wrong_answer(asked))

    second = submit(asked, right_answer(asked))

    assert second == first
    assert [attempt.right for attempt in Attempt.objects.all()] == [False]


@pytest.mark.django_db(transaction=True)
def test_submit_in_parallel_makes_one_attempt(mina: Person) -> None:
    asked = ask(mina, MODE)
    answer = right_answer(asked)

    attempts = at_once([lambda: submit(asked, answer).pk] * 8)

    assert set(attempts) == {Attempt.objects.get().pk}


def test_question_of_an_earlier_revision_is_replaced(
    mina: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = ask(mina, MODE)
    monkeypatch.setitem(KINDS, MODE.slug, replace(MODE, revision=MODE.revision + 1))

    with pytest.raises(OutdatedError):
        submit(asked, right_answer(asked))

    assert Attempt.objects.count() == 0
    assert ask(mina, KINDS[MODE.slug]) != asked


def test_attempt_is_never_changed(mina: Person) -> None:
    asked = ask(mina, MODE)
    attempt = submit(asked, wrong_answer(asked))
    attempt.right = True

    with pytest.raises(AppendOnlyError):
        attempt.save()
    with pytest.raises(AppendOnlyError):
        Attempt.objects.update(right=True)
    with pytest.raises(AppendOnlyError):
        Attempt.objects.all().delete()


def test_deleting_a_person_takes_their_attempts_along(mina: Person) -> None:
    asked = ask(mina, MODE)
    submit(asked, right_answer(asked))

    mina.delete()

    assert (Asked.objects.count(), Attempt.objects.count()) == (0, 0)
