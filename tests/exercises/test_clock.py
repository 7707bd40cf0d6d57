"""The clock was ahead and has been set right: what came later still counts as later."""

from datetime import UTC, datetime, timedelta
from uuid import uuid4

from django.utils import timezone

from course.cohorts.models import Cohort, Person
from course.lessons.reading import reach, readings_of
from course.lessons.shelf import shelf
from exercises.assignments.assigned import mine
from exercises.assignments.verbs import Terms, begin_sitting, practical_of, set_assignment
from exercises.board.reads import BoardWanted, readiness
from exercises.drills.register import KINDS
from exercises.items.reads import first_answers, given_by, kind_lines
from exercises.items.wrong_answers import wrong_answers
from exercises.models import Attempt, Extension, Outcome, Review
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import in_order, next_question, sittings_of, start, stop, taken_by
from exercises.results.oneroster import Package
from exercises.results.tables import TABLES
from exercises.reviews.verbs import (
    Said,
    news_of,
    queue_of,
    replies_to,
    reply,
    review,
    thread_of,
)
from exercises.sign_offs.verbs import (
    Decision,
    lines_of,
    replaced_by,
    sign_off,
    sign_offs_of,
    standing_of,
)
from exercises.standing.scores import beliefs_of, progress_of, row_in_words
from exercises.today.reads import latest_begun
from tests.answers import right_answer, wrong_answer

AHEAD = datetime(2036, 1, 1, 12, tzinfo=UTC)
RIGHT = datetime(2026, 5, 4, 12, tzinfo=UTC)  # set right, and everything after this
MODE, FREE, CARE = (KINDS[slug] for slug in ("choose-the-mode", "free-answer", "care-and-safety"))


def answer(person: Person, *, right: bool, at: datetime, drill: str = MODE.slug) -> Attempt:
    asked = ask(person, KINDS[drill], seed=3, now=at)
    given = right_answer(asked) if right or asked.kind.by_hand else wrong_answer(asked)
    return submit(asked, given, now=at)


def say(by: Person, attempt: Attempt, what: str, at: datetime, score: int | None = None) -> Review:
    return review(by, attempt, Said(what=what, text="Said.", score=score, key=uuid4().hex), now=at)


def test_last_answers_are_those_given_last(mina: Person, harbour: Cohort) -> None:
    wrong = [answer(mina, right=False, at=AHEAD) for _ in range(7)]
    rights = [answer(mina, right=True, at=RIGHT + timedelta(minutes=n)) for n in range(3)]

    progress = next(each for each in progress_of(mina) if each.kind == MODE)
    cell = mina.summary.skills[wrong[0].skill]
    assert progress.rights == [True] * 3 + [False] * 7
    assert (progress.held, cell["state"]) == (True, "steady")
    assert list(Attempt.objects.listed())[:3] == rights[::-1]
    assert Attempt.objects.recent(1).get() == rights[-1]
    assert mina.summary.last_practised == rights[-1].answered_at


def test_row_of_right_answers_ends_with_the_answer_itself(mina: Person) -> None:
    answer(mina, right=True, at=AHEAD)
    second = answer(mina, right=True, at=RIGHT)
    told = row_in_words(second)
    answer(mina, right=False, at=RIGHT - timedelta(days=1))

    assert row_in_words(second) == told == "Not held yet: 2 right without a miss, 1 to go."


def test_beliefs_are_dated_by_the_last_answer_that_shows_them(mina: Person) -> None:
    for at in (AHEAD, RIGHT):
        asked = ask(mina, MODE, seed=3)
        name, answers = next(iter(asked.question["reveals"].items()))
        submit(asked, right_answer(asked) | {name: next(iter(answers))}, now=at)

    assert {when for _, _, when in beliefs_of(mina)} == {RIGHT}


def test_whoever_is_dated_into_the_future_is_not_there(mina: Person, harbour: Cohort) -> None:
    answer(mina, right=True, at=AHEAD)

    board = readiness(harbour, BoardWanted(show="idle"), now=RIGHT)

    assert ([row.person for row in board.rows], board.overview.idle_number) == ([mina], 1)
    answer(mina, right=True, at=RIGHT)
    assert readiness(harbour, BoardWanted(show="idle"), now=RIGHT).rows == []


def test_items_take_the_answer_that_was_given_first(mina: Person) -> None:
    answer(mina, right=False, at=AHEAD)
    answer(mina, right=True, at=RIGHT)
    people = Person.objects.filter(pk=mina.pk)

    given = given_by(people, {MODE.slug: MODE})

    assert first_answers(given, lambda each: each.drill)[mina.pk] == {MODE.slug: False}
    assert wrong_answers(MODE, people)


def test_time_taken_is_never_less_than_nothing(mina: Person, ines: Person, harbour: Cohort) -> None:
    submit(asked := ask(mina, MODE, now=AHEAD), right_answer(asked), now=RIGHT)
    given = given_by(Person.objects.filter(pk=mina.pk), {MODE.slug: MODE})

    (line,) = kind_lines(given, {MODE.slug: MODE})
    (row,) = TABLES["answers"].rows(harbour)
    taken = dict(zip(TABLES["answers"].header(), row, strict=True))["seconds taken"]

    assert (line.time, taken) == ("0 s", "")


def test_last_score_holds_and_what_was_said_stands_in_order(mina: Person, ines: Person) -> None:
    attempt = answer(mina, right=True, at=AHEAD, drill=FREE.slug)
    said = [
        say(ines, attempt, "score", AHEAD, 40),
        say(ines, attempt, "comment", RIGHT),
        say(ines, attempt, "score", RIGHT - timedelta(hours=1), 100),
    ]

    assert thread_of(attempt) == news_of(mina) == said
    assert Outcome.objects.get().review == said[-1]


def test_what_waited_longest_stands_first(
    mina: Person, tom: Person, ines: Person, harbour: Cohort
) -> None:
    waiting = [
        answer(mina, right=True, at=AHEAD, drill=FREE.slug),
        answer(tom, right=True, at=RIGHT, drill=FREE.slug),
    ]
    replies = []
    for attempt in waiting:
        say(ines, attempt, "comment", attempt.answered_at)
        replies.append(reply(attempt.person, attempt, "I see.", now=attempt.answered_at))

    assert list(queue_of(ines)) == waiting
    assert list(replies_to(ines)) == replies
    assert [row[1] for row in TABLES["answers"].rows(harbour)] == [mina.name, tom.name]


def test_last_decision_counts(mina: Person, ines: Person, harbour: Cohort) -> None:
    def signed(state: str, at: datetime) -> object:
        decision = Decision(state=state, bench="Bench 1", note="", key=uuid4().hex)
        return sign_off(ines, mina, harbour, decision, now=at)

    alone, not_yet = signed("alone", AHEAD), signed("not-yet", RIGHT)

    assert [line.sign_off for line in lines_of(harbour)] == [not_yet]
    assert standing_of(mina) == [not_yet]
    assert sign_offs_of(mina) == [not_yet, alone]
    assert (replaced_by(alone), replaced_by(not_yet)) == (not_yet, None)  # type: ignore[arg-type]
    column = list(TABLES["sign-offs"].header()).index("decided")
    decided = [row[column] for row in TABLES["sign-offs"].rows(harbour)]
    assert decided == ["Ready to work alone", "Not ready yet"]


def test_set_goes_on_from_its_last_answer(mina: Person) -> None:
    sitting = start(mina, [], 5, now=AHEAD)
    drills = []
    for at in (AHEAD, RIGHT, RIGHT - timedelta(hours=1)):
        asked = next_question(sitting)
        assert asked
        drills.append(submit(asked, right_answer(asked), now=at).drill)

    assert taken_by(sitting) == [each.drill for each in in_order(sitting)] == drills
    stop(sitting)
    second = start(mina, [], 5, now=RIGHT)
    assert list(sittings_of(mina)) == [second, sitting]


def asked_for(cohort: Cohort, **columns: object) -> None:
    times = {"opens_at": RIGHT - timedelta(days=1), "due_at": RIGHT + timedelta(days=1)}
    terms = Terms(columns={"title": "Asked", **times, **columns}, people=[])
    set_assignment(cohort.instructors.get(), cohort, terms)


def test_assignment_stands_by_its_last_report(mina: Person, ines: Person, harbour: Cohort) -> None:
    asked_for(harbour, what="practical", task="Lay black.")
    (before,) = mine(mina, now=RIGHT)
    first = submit(practical_of(mina, before.assignment), {"text": "I laid black. " * 5}, now=AHEAD)
    say(ines, first, "sent-back", AHEAD)
    second = submit(
        practical_of(mina, before.assignment), {"text": "I laid it anew. " * 5}, now=RIGHT
    )

    (after,) = mine(mina, now=RIGHT)

    assert (after.words, after.work.key) == ("waits for the instructor", second.key)


def test_assignment_stands_by_its_last_set_and_the_answer_that_ended_it(
    mina: Person, harbour: Cohort
) -> None:
    drills = {"what": "drills", "kinds": [CARE.slug], "questions": 2, "right_needed": 2}
    asked_for(harbour, **drills)
    (before,) = mine(mina, now=RIGHT)
    stop(begin_sitting(mina, before.assignment, now=AHEAD), now=AHEAD)
    sitting = begin_sitting(mina, before.assignment, now=RIGHT)
    (begun,) = mine(mina, now=RIGHT)
    for at in (AHEAD, RIGHT):
        asked = next_question(sitting)
        assert asked
        submit(asked, right_answer(asked), now=at)

    (done,) = mine(mina, now=RIGHT)

    assert begun.work.key == sitting.token
    assert (done.words, done.work.at) == ("done", RIGHT)


def test_work_that_is_dated_into_the_future_is_not_called_late(
    mina: Person, harbour: Cohort
) -> None:
    asked_for(harbour, what="practical", task="Lay black.")
    (before,) = mine(mina, now=RIGHT)
    submit(practical_of(mina, before.assignment), {"text": "I laid black. " * 5}, now=AHEAD)

    (after,) = mine(mina, now=RIGHT)

    assert (after.words, after.late) == ("waits for the instructor", False)


def test_last_extension_counts(mina: Person, ines: Person, harbour: Cohort) -> None:
    asked_for(harbour, what="practical", task="Lay black.")
    (before,) = mine(mina, now=RIGHT)
    for at, days in ((AHEAD, 9), (RIGHT, 3)):
        until = RIGHT + timedelta(days=days)
        Extension.objects.create(
            assignment=before.assignment, person=mina, due_at=until, by=ines, at=at
        )

    (after,) = mine(mina, now=RIGHT)

    assert after.due_at == RIGHT + timedelta(days=3)


def test_lesson_that_was_read_last_is_gone_on_with(mina: Person) -> None:
    first, second = shelf().lessons[:2]
    reach(mina, first, first.contents[0].id, AHEAD)
    reach(mina, second, "", RIGHT)
    assert latest_begun(readings_of(mina)).lesson == second  # type: ignore[union-attr]

    reach(mina, first, first.contents[1].id, RIGHT - timedelta(hours=1))

    assert latest_begun(readings_of(mina)).lesson == first  # type: ignore[union-attr]


def test_package_ends_no_sooner_than_it_begins(harbour: Cohort) -> None:
    harbour.started_at = AHEAD
    session = Package(harbour, now=timezone.now()).session()

    assert session["endDate"] >= session["startDate"] == "2036-01-01"
