"""Four weeks of assignments for both groups, and what the learners did for them."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from random import Random
from typing import Any

from course.cohorts.models import Cohort, Person
from course.lessons.reading import finish
from course.lessons.shelf import shelf
from exercises.assignments.verbs import (
    Terms,
    begin_sitting,
    extend,
    practical_of,
    set_assignment,
)
from exercises.demo.cast import Learner
from exercises.demo.in_order import Story
from exercises.drills.register import KINDS
from exercises.models import Assignment, Attempt, Review, Sitting
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import stop
from exercises.reviews.verbs import Said, review

# What, title, opened so many days ago, due so many days ago (negative: still to come), the rest.
ASKED: tuple[tuple[str, str, int, int, dict[str, Any]], ...] = (
    ("lesson", "Read what an edit is", 27, 20, {"lesson": "what-an-edit-is"}),
    (
        "drills",
        "Which mode, before you touch a switch",
        20,
        13,
        {"kinds": ["choose-the-mode"], "questions": 5, "right_needed": 4, "tries": 3},
    ),
    (
        "practical",
        "Lay a leader on the practice tape",
        13,
        6,
        {
            "task": "Lay bars and tone, then black, on practice tape 4. Bring your edit sheet.\n"
            "Note where each begins and ends, by time code.",
        },
    ),
    (
        "drills",
        "See and hear a bad edit",
        6,
        -2,
        {
            "kinds": ["spot-the-bad-edit", "spot-by-eye", "spot-by-ear"],
            "questions": 6,
            "right_needed": 5,
        },
    ),
)
REPORT = (
    "Bars and tone from 00:00:00:00 for one minute, black from 00:01:00:00 to 00:01:30:00. I played"
    " it through from the start: the picture stood still after a second, and the tone was steady."
    " Next time I write the end of the black down before I rewind."
)
AT_WORK = timedelta(minutes=40)  # at the bench, between the task and the report
FIRST_DAYS = timedelta(days=2, hours=12)  # what came then has been read, the rest waits
GOOD_REPORT = "I have seen the leader. Clean, and long enough to run up over."
SENT_BACK = {"jonah": "On the tape the tone stops after twenty seconds. Lay it again, and listen."}
MORE_TIME = {"bram": "Bench 2 was away for repair on Tuesday."}


def set_all(instructor: Person, cohort: Cohort, until: datetime) -> list[Assignment]:
    """The four, each set on the day on which it opened."""
    return [
        set_assignment(
            instructor,
            cohort,
            Terms(columns=columns(*asked, until=until), people=[]),
            now=until - timedelta(days=asked[2]),
        )
        for asked in ASKED
    ]


def columns(
    what: str, title: str, opened: int, due: int, more: dict[str, Any], *, until: datetime
) -> dict[str, Any]:
    day = until.replace(minute=0, second=0, microsecond=0)
    return {
        "what": what,
        "title": title,
        "opens_at": (day - timedelta(days=opened)).replace(hour=9),
        "due_at": (day - timedelta(days=due)).replace(hour=21),
        **more,
    }


def give_more_time(
    instructor: Person, person: Person, learner: Learner, asked: list[Assignment]
) -> None:
    reason = MORE_TIME.get(learner.sign_in_name)
    if reason:
        late = asked[1]
        extend(instructor, late, person, late.due_at + timedelta(days=5), reason)


def do_all(
    person: Person, learner: Learner, asked: list[Assignment], until: datetime
) -> Iterator[Story]:
    """Each on the first of their days after it opened, if there was one."""
    draw = Random(f"{learner.sign_in_name} at work")
    for assignment in asked:
        day = next(days_after(learner, assignment, until), None)
        if day:
            yield do(person, learner, assignment, day, draw)


def days_after(learner: Learner, assignment: Assignment, until: datetime) -> Iterator[datetime]:
    for ago in sorted(learner.days, reverse=True):
        evening = (until - timedelta(days=ago)).replace(hour=19, minute=10)
        if evening > assignment.opens_at:
            yield evening


def do(
    person: Person, learner: Learner, assignment: Assignment, now: datetime, draw: Random
) -> Story:
    yield now
    if assignment.what == Assignment.What.LESSON:
        lesson = shelf().find(assignment.lesson)
        if lesson:
            finish(person, lesson, now)
    elif assignment.what == Assignment.What.PRACTICAL:
        asked = practical_of(person, assignment, now=now - AT_WORK)
        report = submit(asked, {"text": REPORT}, now=now)
        if now < assignment.opens_at + FIRST_DAYS:
            yield now + timedelta(hours=20)
            look_at(report, learner, assignment.made_by, now + timedelta(hours=20))
    else:
        sitting = begin_sitting(person, assignment, now=now)
        yield from answer_sitting(person, learner, sitting, draw)


def look_at(report: Attempt, learner: Learner, instructor: Person, now: datetime) -> None:
    key = f"demo-report-{learner.sign_in_name}"
    back = SENT_BACK.get(learner.sign_in_name)
    said = (
        Said(what=Review.What.SENT_BACK, text=back, key=key)
        if back
        else Said(what=Review.What.SCORE, text=GOOD_REPORT, score=100, key=key)
    )
    review(instructor, report, said, now=now)


def answer_sitting(person: Person, learner: Learner, sitting: Sitting, draw: Random) -> Story:
    """By what they believe to the last, so that some get it wrong and begin no second sitting."""
    held = {belief for belief, days in learner.beliefs.items() if days > len(learner.days)}
    kinds = [KINDS[slug] for slug in sitting.kinds]
    now = sitting.started_at
    for number in range(sitting.length):
        now += timedelta(seconds=100 + int(80 * draw.random()))
        yield now
        asked = ask(person, kinds[number % len(kinds)], seed=draw.getrandbits(31), now=now)
        asked.sitting = sitting
        asked.save(update_fields=["sitting"])
        now += timedelta(seconds=30)
        yield now
        submit(asked, asked.kind.tells(asked.as_question()).answers(held)[0], now=now)
    stop(sitting, now=now)
