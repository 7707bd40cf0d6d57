"""Weeks of practice by people with known beliefs, through the verbs that learners use."""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from random import Random
from typing import Any

from course.cohorts.models import Person
from course.lessons.reading import finish, reach
from course.lessons.shelf import shelf
from exercises.demo.cast import Learner
from exercises.demo.in_order import Story
from exercises.drills.question import Question
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit

Draw = Callable[[], float]
KINDS_A_DAY = 3  # the next three of the register each day, in turn


def practise(person: Person, learner: Learner, until: datetime) -> Story:
    """Their answers on each of their days, the same for the same learner and day."""
    draw = Random(learner.sign_in_name).random
    for day, ago in enumerate(learner.days):
        yield from practise_once(person, learner, day, until - timedelta(days=ago), draw)


def practise_once(person: Person, learner: Learner, day: int, date: datetime, draw: Draw) -> Story:
    """The answers of one of their days, the first of which is 0."""
    kinds = [kind for kind in KINDS.values() if not kind.by_hand]
    held = {belief for belief, days in learner.beliefs.items() if day < days}
    for number, now in enumerate(moments(date, learner.answers, draw)):
        yield now
        kind = kinds[(day * KINDS_A_DAY + number % KINDS_A_DAY) % len(kinds)]
        asked = ask(person, kind, seed=int(draw() * 2**31), now=now)
        answer = asked.kind.tells(asked.as_question()).answers(held)[0]
        if 100 * draw() < learner.slips:
            answer = slipped(asked.as_question(), draw)
        now += timedelta(seconds=20 + int(100 * draw()))
        yield now
        submit(asked, answer, now=now)


def read(person: Person, learner: Learner, until: datetime) -> Story:
    """A lesson on each of their days, in the course's order; the last one only begun."""
    for lesson, ago in zip(shelf().lessons, learner.days, strict=False):
        at = (until - timedelta(days=ago)).replace(hour=17, minute=30)
        yield at
        reach(person, lesson, lesson.contents[0].id, at)
        if ago > min(learner.days):
            finish(person, lesson, at)


def moments(day: datetime, count: int, draw: Draw) -> Iterator[datetime]:
    """When the day's questions are asked: in one sitting in the evening."""
    now = day.replace(hour=18, minute=int(60 * draw()), second=0, microsecond=0)
    for _ in range(count):
        yield now
        now += timedelta(seconds=130 + int(90 * draw()))


def slipped(question: Question, draw: Draw) -> dict[str, Any]:
    """An answer picked without thinking."""
    answer = {}
    for part in question.asks:
        possible = part.every()
        answer[part.name] = possible[int(draw() * len(possible))]
    return answer
