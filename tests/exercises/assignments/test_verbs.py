"""Assignments: what is asked, what was done for it, and when."""

from datetime import UTC, datetime, timedelta
from typing import Any
from uuid import uuid4

import pytest
from pytest_django import DjangoAssertNumQueries

from course.cohorts.archiving import archive, reopen
from course.cohorts.models import Cohort, Person
from course.lessons.reading import finish
from course.lessons.shelf import shelf
from exercises.assignments.assigned import AssignmentStanding, counts, mine, standings_in
from exercises.assignments.verbs import (
    AskedNoMoreError,
    NoTriesLeftError,
    OtherSetOpenError,
    Terms,
    begin_sitting,
    change_assignment,
    extend,
    practical_of,
    set_assignment,
    withdraw_assignment,
)
from exercises.models import Assignment, Attempt, Sitting
from exercises.practice.attempts import ask_again, submit
from exercises.practice.debrief import debrief
from exercises.practice.sittings import next_question, start, stop
from exercises.reviews.verbs import Said, answer_again, review
from exercises.standing.own_progress import own_progress_of
from tests.answers import right_answer, wrong_answer
from tests.own import published
from tests.people import learner

OPENS = datetime(2026, 5, 4, 9, tzinfo=UTC)
DUE = OPENS + timedelta(days=7)
AFTER = DUE + timedelta(days=1)
DRILLS = {
    "what": "drills",
    "kinds": ["care-and-safety"],
    "questions": 3,
    "right_needed": 2,
}


def terms(*people: Person, **columns: Any) -> Terms:
    given = {"title": "Care of tape", "opens_at": OPENS, "due_at": DUE, **DRILLS, **columns}
    return Terms(columns=given, people=list(people))


@pytest.fixture
def care(ines: Person, harbour: Cohort, mina: Person) -> Assignment:
    """A sitting of three questions about care, two of them right, for the Harbour group."""
    return set_assignment(ines, harbour, terms())


def take(sitting: Sitting, letters: str, *, at: datetime) -> None:
    """Answer so many questions of a sitting: "rw" is one right, then one wrong."""
    for letter in letters:
        asked = next_question(sitting)
        assert asked
        given = right_answer(asked) if letter == "r" else wrong_answer(asked)
        submit(asked, given, now=at)


def done(person: Person, assignment: Assignment, letters: str, *, at: datetime = DUE) -> None:
    sitting = begin_sitting(person, assignment, now=at)
    take(sitting, letters, at=at)
    stop(sitting, now=at)


def standing(person: Person, *, now: datetime = DUE) -> AssignmentStanding:
    (found,) = mine(person, now=now)
    return found


def test_set_with_enough_right_is_done(care: Assignment, mina: Person) -> None:
    assert standing(mina).words == "to do"
    done(mina, care, "wwr")
    assert standing(mina).words == "begun"
    done(mina, care, "rwr")

    found = standing(mina)
    assert (found.words, found.work.tries, found.work.best) == ("done", 2, 2)


@pytest.mark.parametrize(
    ("at", "words"), [(DUE, "done"), (DUE + timedelta(minutes=1), "done, late")]
)
def test_late_is_said_not_hidden(at: datetime, words: str, care: Assignment, mina: Person) -> None:
    done(mina, care, "rrr", at=at)

    assert standing(mina, now=AFTER).words == words


def test_not_done_in_time_is_overdue(care: Assignment, mina: Person) -> None:
    assert standing(mina, now=AFTER).words == "to do, overdue"


def test_extension_is_for_one_person_and_the_last_one_counts(
    ines: Person, care: Assignment, mina: Person, tom: Person
) -> None:
    extend(ines, care, mina, AFTER + timedelta(days=9), "Away at sea.")
    extend(ines, care, mina, AFTER, "Back earlier.")

    assert (standing(mina).due_at, standing(mina).extended) == (AFTER, True)
    assert (standing(tom).due_at, standing(tom).extended) == (DUE, False)
    done(mina, care, "rrr", at=AFTER)
    assert standing(mina, now=AFTER).words == "done"


def test_assignment_is_hidden_until_it_opens_and_once_withdrawn(
    care: Assignment, mina: Person
) -> None:
    assert mine(mina, now=OPENS - timedelta(minutes=1)) == []
    assert len(mine(mina, now=OPENS)) == 1

    withdraw_assignment(care)

    assert mine(mina, now=OPENS) == []


def test_archived_cohort_asks_for_nothing(
    ines: Person, care: Assignment, harbour: Cohort, mina: Person
) -> None:
    drill = published(ines, harbour)
    archive(ines, harbour, None)
    archived = (mine(mina, now=DUE), own_progress_of(mina))
    reopen(ines, harbour)

    assert archived == ([], [])
    assert standing(mina).assignment == care
    assert [each.kind.slug for each in own_progress_of(mina)] == [drill.slug]


def test_assignment_for_some_is_for_nobody_else(
    ines: Person, harbour: Cohort, mina: Person, tom: Person, lena: Person
) -> None:
    set_assignment(ines, harbour, terms(mina))

    assert [len(mine(person, now=DUE)) for person in (mina, tom, lena)] == [1, 0, 0]


def test_assignment_for_all_is_for_who_joins_later(care: Assignment, harbour: Cohort) -> None:
    assert standing(learner("Una Quist", harbour)).assignment == care


def test_no_more_sets_than_allowed(ines: Person, harbour: Cohort, mina: Person) -> None:
    care = set_assignment(ines, harbour, terms(tries=1))
    done(mina, care, "www")

    with pytest.raises(NoTriesLeftError):
        begin_sitting(mina, care)
    assert standing(mina).work.tries == 1


def test_begun_set_is_gone_on_with_another_is_not_pushed_aside(
    care: Assignment, mina: Person
) -> None:
    sitting = begin_sitting(mina, care)
    assert begin_sitting(mina, care) == sitting
    stop(sitting)
    start(mina, [], 5)

    with pytest.raises(OtherSetOpenError):
        begin_sitting(mina, care)


def test_set_asks_for_the_kinds_that_were_asked_for(care: Assignment, mina: Person) -> None:
    done(mina, care, "rrr")

    assert {found.drill for found in mina.attempts.all()} == {"care-and-safety"}


def test_set_asks_an_own_drill_once_and_waits_until_it_is_read(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    mode, note = published(ines, harbour), published(ines, harbour, form="text")
    asked_for = terms(kinds=[mode.slug, note.slug], questions=2)
    sitting = begin_sitting(mina, set_assignment(ines, harbour, asked_for))
    take(sitting, "rr", at=DUE)

    waits = standing(mina).words
    score(ines, Attempt.objects.get(drill=note.slug), 100)

    assert {each.drill for each in Attempt.objects.all()} == {mode.slug, note.slug}
    assert (waits, standing(mina).words) == ("waits for the instructor", "done")


def test_set_with_an_answer_sent_back_is_begun_until_it_is_answered_again(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    note = published(ines, harbour, form="text")
    asked_for = terms(kinds=[note.slug], questions=1, right_needed=1)
    sitting = begin_sitting(mina, set_assignment(ines, harbour, asked_for))
    take(sitting, "r", at=DUE)
    stop(sitting)
    first = Attempt.objects.get()
    review(ines, first, Said(what="sent-back", text="Which recorder?", key="back"))

    begun = standing(mina).words
    again = ask_again(first)
    submit(again, right_answer(again), now=DUE)

    assert (begun, standing(mina).words) == ("begun", "waits for the instructor")
    assert debrief(sitting).tried == f"1 of 1 questions: {note.kind.title}."


def test_change_touches_no_attempt_and_no_set_begun_before(care: Assignment, mina: Person) -> None:
    done(mina, care, "rrw")
    before = list(Attempt.objects.values())

    change_assignment(care, terms(right_needed=3, title="More care"))

    assert list(Attempt.objects.values()) == before
    assert standing(mina).words == "done"
    assert Sitting.objects.get().right_needed == 2


def test_lesson_is_done_once_it_is_read(ines: Person, harbour: Cohort, mina: Person) -> None:
    lesson = shelf().lessons[0]
    set_assignment(ines, harbour, terms(what="lesson", lesson=lesson.slug))
    assert standing(mina).words == "to do"

    finish(mina, lesson, DUE)

    assert (standing(mina).words, standing(mina).work.at) == ("done", DUE)


def score(by: Person, attempt: Attempt, hundredths: int) -> None:
    review(by, attempt, Said(what="score", text="Seen.", score=hundredths, key=uuid4().hex))


def test_practical_waits_until_the_instructor_calls_it_right(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    columns = {"what": "practical", "task": "Lay ten seconds of black."}
    asked_for = set_assignment(ines, harbour, terms(**columns))
    asked = practical_of(mina, asked_for)
    assert practical_of(mina, asked_for) == asked
    report = submit(asked, {"text": "I laid black from the start. " * 3}, now=DUE)
    assert standing(mina).words == "waits for the instructor"

    score(ines, report, 60)
    assert standing(mina, now=AFTER).words == "begun, overdue"
    again = submit(practical_of(mina, asked_for), {"text": "Once more, whole. " * 3}, now=AFTER)
    score(ines, again, 100)

    assert standing(mina, now=AFTER).words == "done, late"


@pytest.fixture
def black(ines: Person, harbour: Cohort, mina: Person) -> Assignment:
    """A practical for the Harbour group."""
    return set_assignment(ines, harbour, terms(what="practical", task="Lay ten seconds of black."))


def report(person: Person, assignment: Assignment, *, at: datetime) -> Attempt:
    return submit(practical_of(person, assignment), {"text": "I laid black. " * 5}, now=at)


def send_back(by: Person, attempt: Attempt, key: str = "back") -> None:
    review(by, attempt, Said(what="sent-back", text="It is too short.", key=key))


def test_practical_sent_back_waits_for_the_learner_and_is_late_when_late(
    ines: Person, black: Assignment, mina: Person
) -> None:
    send_back(ines, report(mina, black, at=OPENS))

    assert standing(mina).words == "sent back, waits for the learner"
    assert standing(mina).own_words == "sent back, waits for you"
    late = standing(mina, now=AFTER)
    assert (late.late, late.words) == (True, "sent back, waits for the learner, overdue")
    assert counts(black, [standing(mina)]).words == "0 of 1 done, 1 sent back"


def test_report_in_the_stead_of_one_sent_back_is_asked_once_and_for_the_same_practical(
    ines: Person, black: Assignment, mina: Person
) -> None:
    first = report(mina, black, at=OPENS)
    send_back(ines, first)

    again = answer_again(first)
    assert (again.again, again.assignment) == (first, black)
    assert again.as_question().shown["task"] == "Lay ten seconds of black."
    assert practical_of(mina, black) == answer_again(first) == again
    submit(again, {"text": "Ten seconds now. " * 5}, now=DUE)

    assert answer_again(first) == again
    assert standing(mina, now=AFTER).words == "waits for the instructor"


def test_practical_asked_no_more_is_not_answered_again(
    ines: Person, black: Assignment, mina: Person
) -> None:
    first = report(mina, black, at=OPENS)
    send_back(ines, first)
    withdraw_assignment(black)

    with pytest.raises(AskedNoMoreError):
        answer_again(first)


def test_two_practicals_wait_for_their_own_reports(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    first, second = (
        set_assignment(ines, harbour, terms(what="practical", task=task)) for task in ("One", "Two")
    )
    one, two = practical_of(mina, first), practical_of(mina, second)

    assert practical_of(mina, first) == one
    assert practical_of(mina, second) == two


def test_reads_cost_as_many_queries_as_ever(
    ines: Person,
    care: Assignment,
    mina: Person,
    harbour: Cohort,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for number in range(2):
        done(mina, care, "rrr")
        with django_assert_num_queries(5):  # assignments, sets, what waits, reports, extensions
            mine(mina, now=DUE)
        # the same; then the cohort, whom it is meant for by name, and the people
        with django_assert_num_queries(8):
            standings_in(harbour, now=DUE)
        learner(f"Extra{number} Person", harbour)
