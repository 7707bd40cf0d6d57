"""Reviewing: every word is a row, the last score counts, nothing is lost or doubled."""

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection

from course.cohorts.models import Cohort, Membership, Person
from exercises.drills.register import KINDS
from exercises.models import AppendOnlyError, Asked, Attempt, Outcome, Review
from exercises.practice.attempts import ask, submit
from exercises.practice.debrief import happened
from exercises.reviews.verbs import (
    NothingToAnswerError,
    RepliedError,
    Said,
    answer_again,
    mark_read,
    news_of,
    queue_of,
    replies_to,
    reply,
    review,
    thread_of,
)
from exercises.standing.scores import beliefs_of, progress_of, standings
from tests.answers import right_answer, wrong_answer

FREE, MODE = KINDS["free-answer"], KINDS["choose-the-mode"]
NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)


def said(what: str = "comment", score: int | None = None, key: str = "") -> Said:
    key = key or f"{what}-{score}"
    return Said(what=what, text="See the rule about run-up.", score=score, key=key)


def scored(score: int, key: str = "") -> Said:
    return said("score", score, key)


def written(person: Person, day: int = 0) -> Attempt:
    """A free answer, which waits."""
    asked = ask(person, FREE)
    return submit(asked, right_answer(asked), now=NOON + timedelta(days=day))


def judged(person: Person, *, right: bool, seed: int = 3) -> Attempt:
    asked = ask(person, MODE, seed=seed)
    return submit(asked, right_answer(asked) if right else wrong_answer(asked))


def rights(person: Person, drill: str) -> list[bool]:
    return next(each.rights for each in progress_of(person) if each.kind.slug == drill)


def test_free_answer_counts_for_nothing_until_it_is_scored(mina: Person, ines: Person) -> None:
    attempt = written(mina)
    before = (rights(mina, FREE.slug), dict(standings([mina])[mina.pk]))

    review(ines, attempt, scored(100))

    assert before == ([], {})
    assert rights(mina, FREE.slug) == [True]
    assert [each.score for each in standings([mina])[mina.pk].values()] == [100]


def test_overruled_score_counts_instead_of_the_verdict(mina: Person, ines: Person) -> None:
    attempt = judged(mina, right=False)

    review(ines, attempt, scored(100))

    assert rights(mina, MODE.slug) == [True]
    assert standings([mina])[mina.pk][attempt.skill].score == 100
    assert Attempt.objects.get().right is False


def test_overruled_answer_points_at_no_belief_any_more(mina: Person, ines: Person) -> None:
    asked = ask(mina, MODE, seed=3)
    revealing = next(iter(next(iter(asked.question["reveals"].values()))))
    name = next(iter(asked.question["reveals"]))
    attempt = submit(asked, right_answer(asked) | {name: revealing})
    before = len(beliefs_of(mina))

    review(ines, attempt, scored(100))

    assert (before > 0, beliefs_of(mina)) == (True, [])


def test_last_of_several_scores_holds_and_all_are_kept(
    mina: Person, ines: Person, rafe: Person, harbour: Cohort
) -> None:
    harbour.instructors.add(rafe)
    attempt = written(mina)

    review(ines, attempt, scored(40, "a"), now=NOON)
    review(rafe, attempt, scored(100, "b"), now=NOON)
    review(ines, attempt, scored(70, "c"), now=NOON)

    assert [(each.by, each.score) for each in thread_of(attempt)] == [
        (ines, 40),
        (rafe, 100),
        (ines, 70),
    ]
    assert (Outcome.objects.get().score, Outcome.objects.get().right) == (70, False)


def test_comment_changes_no_score(mina: Person, ines: Person) -> None:
    attempt = judged(mina, right=False)

    review(ines, attempt, said("comment"))

    assert (rights(mina, MODE.slug), Outcome.objects.count()) == ([False], 0)


def test_same_review_twice_is_kept_once(mina: Person, ines: Person) -> None:
    attempt = written(mina)

    first = review(ines, attempt, scored(100))

    assert review(ines, attempt, scored(100)) == first
    assert Review.objects.count() == 1


@pytest.mark.django_db(transaction=True)
def test_reviews_at_once_are_both_kept_and_the_later_counts(
    mina: Person, ines: Person, rafe: Person, harbour: Cohort
) -> None:
    harbour.instructors.add(rafe)
    attempt = written(mina)

    def one(way: tuple[Person, int]) -> None:
        try:
            review(way[0], attempt, scored(way[1], f"key-{way[1]}"))
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(one, [(ines, 10), (rafe, 20), (ines, 30), (rafe, 40)]))

    thread = thread_of(attempt)
    assert {each.score for each in thread} == {10, 20, 30, 40}
    assert Outcome.objects.get().review == thread[-1]


def test_only_those_who_teach_the_learner_review(
    mina: Person, tom: Person, rafe: Person, ada: Person
) -> None:
    attempt = written(mina)

    for by in (mina, tom, rafe, ada):
        with pytest.raises(PermissionDenied):
            review(by, attempt, scored(100))
    assert Review.objects.count() == 0


def test_instructor_whose_cohort_was_left_reviews_no_more(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    attempt = written(mina)
    Membership.objects.filter(person=mina, cohort=harbour).delete()

    assert list(queue_of(ines)) == []
    with pytest.raises(PermissionDenied):
        review(ines, attempt, scored(100))


def test_learner_replies_once(mina: Person, tom: Person, ines: Person) -> None:
    attempt = written(mina)
    with pytest.raises(NothingToAnswerError):
        reply(mina, attempt, "But why?")
    review(ines, attempt, said("comment"))
    with pytest.raises(PermissionDenied):
        reply(tom, attempt, "Let me.")

    first = reply(mina, attempt, "I see.")

    assert reply(mina, attempt, "I see.") == first
    with pytest.raises(RepliedError):
        reply(mina, attempt, "No, wait.")
    assert [each.text for each in attempt.reviews.filter(what="reply")] == ["I see."]


def test_reviews_and_attempts_stay_as_they_are(mina: Person, ines: Person) -> None:
    attempt = written(mina)
    made = review(ines, attempt, scored(100))
    kept = Attempt.objects.values().get()
    made.text = "Otherwise."

    with pytest.raises(AppendOnlyError):
        made.save()
    with pytest.raises(AppendOnlyError):
        Review.objects.update(score=0)
    assert kept["pending"] is True


def test_sent_back_gives_one_new_question_of_the_situation(mina: Person, ines: Person) -> None:
    attempt = written(mina)
    with pytest.raises(NothingToAnswerError):
        answer_again(attempt)
    waiting = ask(mina, FREE)
    review(ines, attempt, said("sent-back"))

    asked = answer_again(attempt)

    assert asked.as_question().situation == attempt.situation
    assert answer_again(attempt) == asked == ask(mina, FREE) != waiting
    assert (asked.again, Asked.objects.filter(latest=True).get()) == (attempt, asked)


def test_sent_back_again_stays_one_question(mina: Person, ines: Person) -> None:
    attempt = judged(mina, right=False)
    for key in ("a", "b"):
        review(ines, attempt, said("sent-back", key=key))
        new = answer_again(attempt)
    submit(new, right_answer(new))

    assert answer_again(attempt) == new
    assert Asked.objects.filter(again=attempt).count() == 1


def test_queue_holds_what_waits_in_own_cohorts_the_oldest_first(
    mina: Person, tom: Person, lena: Person, ines: Person, rafe: Person, harbour: Cohort
) -> None:
    first, second, others = written(tom, day=1), written(mina, day=2), written(lena)
    back, done = written(mina, day=3), written(tom, day=4)
    judged(mina, right=False)
    review(ines, back, said("sent-back"))
    review(ines, done, scored(50))

    assert list(queue_of(ines)) == list(queue_of(ines, harbour)) == [first, second]
    assert list(queue_of(rafe)) == [others]
    assert {each.cohort_pk for each in queue_of(ines)} == {harbour.pk}  # type: ignore[attr-defined]


def test_learner_in_two_cohorts_waits_once(
    mina: Person, ines: Person, harbour: Cohort, slipway: Cohort
) -> None:
    slipway.instructors.add(ines)
    Membership.objects.create(cohort=slipway, person=mina)
    attempt = written(mina)

    assert list(queue_of(ines)) == [attempt]
    (placed,) = queue_of(ines, slipway)
    assert placed.cohort_pk == slipway.pk  # type: ignore[attr-defined]


def test_news_last_until_they_are_opened(mina: Person, tom: Person, ines: Person) -> None:
    attempt = written(mina)
    made = review(ines, attempt, said("comment"))
    before = (news_of(mina), news_of(tom))

    mark_read(thread_of(attempt), by_learner=True)
    mark_read(thread_of(attempt), by_learner=True)

    assert before == ([made], [])
    assert news_of(mina) == []


def test_reply_waits_until_an_instructor_opens_it(
    mina: Person, ines: Person, rafe: Person, slipway: Cohort
) -> None:
    attempt = written(mina)
    review(ines, attempt, said("comment"))
    made = reply(mina, attempt, "I see.")
    mark_read(thread_of(attempt), by_learner=True)
    before = (list(replies_to(ines)), list(replies_to(rafe)))

    mark_read(thread_of(attempt), by_learner=False)

    assert before == ([made], [])
    assert list(replies_to(ines)) == []


@pytest.mark.parametrize(
    ("score", "words"),
    [(None, "1 waiting for your instructor."), (100, "1 right."), (30, "1 partly right.")],
)
def test_debrief_counts_what_holds_now(
    mina: Person, ines: Person, score: int | None, words: str
) -> None:
    attempt = written(mina)
    if score is not None:
        review(ines, attempt, scored(score))

    assert happened(list(Attempt.objects.listed().with_again())) == words


def test_debrief_tells_what_was_sent_back_until_it_is_answered_again(
    mina: Person, ines: Person
) -> None:
    attempt = written(mina)
    review(ines, attempt, said("sent-back"))

    def told() -> str:
        return happened(list(Attempt.objects.listed().with_again()))

    before = told()
    again = answer_again(attempt)
    submit(again, right_answer(again))

    assert (before, told()) == ("1 sent back to you.", "1 waiting for your instructor.")


def test_deleting_the_learner_takes_the_reviews_along(mina: Person, ines: Person) -> None:
    attempt = written(mina)
    review(ines, attempt, scored(100))
    reply(mina, attempt, "I see.")
    review(ines, attempt, said("sent-back"))
    answer_again(attempt)

    mina.delete()

    assert (Review.objects.count(), Outcome.objects.count(), Asked.objects.count()) == (0, 0, 0)
