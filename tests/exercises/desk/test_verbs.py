"""Write, publish, revise, retire: and what becomes of questions and answers."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

import pytest
from django.db import connection
from django.http import Http404

from course.cohorts.benches import Bench
from course.cohorts.models import Cohort, Person
from exercises.desk.verbs import NotPublishedError, publish, retire, revise, write
from exercises.finding.kinds import kind_for, own_drill_for
from exercises.models import Asked, OwnDrill, Summary
from exercises.practice.attempts import OutdatedError, ask, ask_again, submit
from exercises.standing.own_progress import own_progress_of
from tests.own import CUTAWAY, mode_text, note_text, published

RIGHT = {"mode": "insert-picture"}


def test_written_twice_is_one_drill(ines: Person) -> None:
    first, second = (write(ines, "mode", mode_text(), key="c" * 32) for _ in range(2))

    assert first == second
    assert first.revisions.count() == 1


def test_drill_is_asked_of_its_cohort_only(
    ines: Person, rafe: Person, mina: Person, lena: Person, harbour: Cohort
) -> None:
    drill = write(ines, "mode", mode_text(), key=CUTAWAY["key"])
    with pytest.raises(Http404):
        kind_for(mina, drill.slug)
    publish(drill, ines, [harbour])

    assert kind_for(mina, drill.slug).title == "A gull over the winch"
    assert kind_for(ines, drill.slug).revision == 1
    for stranger in (lena, rafe):
        with pytest.raises(Http404):
            kind_for(stranger, drill.slug)


def test_co_instructor_sees_but_does_not_change(
    ines: Person, rafe: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour)
    harbour.instructors.add(rafe)

    assert own_drill_for(rafe, drill.pk) == drill
    with pytest.raises(Http404):
        own_drill_for(rafe, drill.pk, to_change=True)


@pytest.mark.parametrize("slug", ["own-", "own-0", "own-x", "own-²", "own-" + "9" * 30])
def test_slug_that_names_no_drill_is_not_found(slug: str, mina: Person) -> None:
    with pytest.raises(Http404):
        kind_for(mina, slug)


def test_answer_counts_for_the_authors_skill(ines: Person, mina: Person, harbour: Cohort) -> None:
    attempt = submit(ask(mina, published(ines, harbour).kind), RIGHT)

    assert (attempt.right, attempt.skill, attempt.situation) == (
        True,
        "replacing-inside-it",
        "revision-1",
    )
    assert list(Summary.objects.get(pk=mina.pk).skills) == ["replacing-inside-it"]


def test_attempt_keeps_the_revision_it_was_made_on(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour)
    attempt = submit(ask(mina, drill.kind), RIGHT)
    revise(drill, ines, mode_text(title="A gull, longer", tracks="both"))
    assert kind_for(mina, drill.slug).revision == 1
    publish(drill, ines, [harbour])
    attempt.refresh_from_db()

    assert (attempt.kind.title, attempt.kind.revision) == ("A gull over the winch", 1)
    assert attempt.asked.as_question().right == RIGHT
    assert kind_for(mina, drill.slug).title == "A gull, longer"
    assert [each.is_new for each in own_progress_of(mina)] == [True]


def test_open_question_of_an_older_revision_is_not_judged(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour)
    asked = ask(mina, drill.kind)
    revise(drill, ines, mode_text(tracks="both"))
    publish(drill, ines, [harbour])

    with pytest.raises(OutdatedError):
        submit(Asked.objects.get(pk=asked.pk), RIGHT)
    assert ask(mina, kind_for(mina, drill.slug)).revision == 2


def test_unchanged_revision_is_not_kept_twice(ines: Person) -> None:
    drill = write(ines, "mode", mode_text(), key="c" * 32)

    assert revise(drill, ines, mode_text()).number == 1
    assert revise(drill, ines, mode_text(title="Another")).number == 2
    assert drill.revisions.count() == 2


def test_two_right_answers_are_not_published(ines: Person, harbour: Cohort) -> None:
    drill = write(ines, "mode", mode_text(tracks="both", freed="after"), key="c" * 32)

    with pytest.raises(NotPublishedError):
        publish(drill, ines, [harbour])
    assert list(drill.cohorts.all()) == []


def test_retired_drill_puts_open_questions_away_and_keeps_answers(
    ines: Person, mina: Person, tom: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour)
    answered, waiting = submit(ask(mina, drill.kind), RIGHT), ask(tom, drill.kind)
    retire(drill)
    retire(drill)

    answered.refresh_from_db()
    assert answered.kind.title == "A gull over the winch"
    assert not Asked.objects.open().filter(pk=waiting.pk).exists()
    with pytest.raises(OutdatedError):
        submit(Asked.objects.get(pk=waiting.pk), RIGHT)
    with pytest.raises(OutdatedError):
        ask_again(answered)
    with pytest.raises(Http404):
        kind_for(tom, drill.slug)
    with pytest.raises(NotPublishedError):
        publish(drill, ines, [harbour])


def test_cohort_left_out_is_asked_no_more(ines: Person, mina: Person, harbour: Cohort) -> None:
    drill = published(ines, harbour)
    waiting = ask(mina, drill.kind)
    publish(drill, ines, [])

    with pytest.raises(OutdatedError):
        submit(Asked.objects.get(pk=waiting.pk), RIGHT)
    assert own_progress_of(mina) == []


def test_answer_sent_twice_is_one_attempt(ines: Person, mina: Person, harbour: Cohort) -> None:
    drill = published(ines, harbour)
    asked = ask(mina, drill.kind)
    first = submit(asked, RIGHT)
    ask(mina, drill.kind)

    assert submit(Asked.objects.get(pk=asked.pk), {"mode": "assemble"}) == first


def test_written_answer_waits_for_the_instructor(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour, form="text")
    attempt = submit(ask(mina, drill.kind), {"text": "The film ends at 00:01:30:00."})

    assert attempt.pending
    assert attempt.feedback["rubric"] == ["where the film ends", "which recorder"]
    assert [each.last for each in own_progress_of(mina)] == [attempt]


def test_publisher_leaves_cohorts_of_others_alone(
    ines: Person, harbour: Cohort, slipway: Cohort
) -> None:
    drill = write(ines, "text", note_text(), key="c" * 32)
    publish(drill, ines, [harbour, slipway])

    assert list(drill.cohorts.all()) == [harbour]


@pytest.mark.django_db(transaction=True)
def test_published_and_revised_at_once_keeps_both(ines: Person, harbour: Cohort) -> None:
    drill = write(ines, "text", note_text(), key="c" * 32)

    def at_once(work: Callable[[], object]) -> None:
        try:
            work()
        finally:
            connection.close()

    def once_more(title: str) -> Callable[[], object]:
        return lambda: revise(drill, ines, note_text(title=title))

    works = [once_more("One"), lambda: publish(drill, ines, [harbour]), once_more("Two")]
    with ThreadPoolExecutor(3) as pool:
        list(pool.map(at_once, [*works, *works[1:2]]))

    found = OwnDrill.objects.get(pk=drill.pk)
    assert sorted(each.number for each in found.revisions.all()) == [1, 2, 3]
    assert list(found.cohorts.all()) == [harbour]


def test_own_drill_tells_its_own_bench_only(ines: Person, mina: Person, harbour: Cohort) -> None:
    """The figures of the learner's bench would contradict those that the author wrote."""
    frames = {"lock": 175, "relock": 25, "erase_gap": 50}
    harbour.bench = Bench.objects.create(name="Bench 1", pre_roll=7, source_run_up=7, **frames)
    harbour.save()
    asked = ask(mina, published(ines, harbour).kind)

    assert asked.question["bench"] is None
    assert "run-up 5 seconds" in dict(asked.question["shown"]["facts"])["Bench"]
