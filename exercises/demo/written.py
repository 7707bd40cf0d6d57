"""What the demo's learners wrote in their own words, and what came of it. All invented."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import count

from course.cohorts.models import Person
from exercises.demo.in_order import Story
from exercises.drills.register import kind
from exercises.models import Attempt, Review
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, reply, review

FREE_ANSWER = kind("free-answer")


@dataclass(frozen=True, kw_only=True)
class WrittenAnswer:
    """An answer so many days before today; `said` the day after, unless it waits still."""

    sign_in_name: str
    situation: str
    ago: int
    text: str
    said: str = ""
    score: int | None = None
    reply: str = ""


WRITTEN = (
    WrittenAnswer(
        sign_in_name="wren",
        situation="explain-what-pulses-are-for",
        ago=3,
        text="An insert records picture or sound, but no control track. A new tape has no pulses, "
        "so nothing locks to what was inserted. Next time we lay black along the whole tape with "
        "an assemble first, and insert into that.",
        said="Clear, and in the right order. Say also how long the black has to be.",
        score=100,
    ),
    WrittenAnswer(
        sign_in_name="bram",
        situation="explain-what-pulses-are-for",
        ago=4,
        text="The tape was probably an old one. I would insert the shot again, because an insert "
        "records everything that is needed, and look at it before going on.",
        said="An insert leaves the control track alone. Read about it once more, then answer anew.",
    ),
    WrittenAnswer(
        sign_in_name="maeve",
        situation="mend-now-or-later",
        ago=5,
        text="I would mend it now. The source tape is still in the player, and we know where the "
        "take begins.",
        said="The right decision. What weighs most is missing: what is laid next depends on it.",
        score=60,
        reply="So each day we wait there is more to lay again. I had not thought of that.",
    ),
    WrittenAnswer(
        sign_in_name="nell",
        situation="hand-over-the-bench",
        ago=4,
        text="The film ends where the sheet in the case says. It was made on the recorder beside "
        "the window, so please go on with that one. Still to be done: the narration over the last "
        "three shots.",
    ),
    WrittenAnswer(
        sign_in_name="sorrel",
        situation="propose-instead-of-a-dissolve",
        ago=1,
        text="Two machines can make a cut and nothing else. I would cut on a movement that goes "
        "the same way in both shots, or lay a second of black between them, which says that time "
        "has passed.",
    ),
    WrittenAnswer(
        sign_in_name="tamsin",
        situation="brief-the-camera",
        ago=5,
        text="Let the camera run for ten seconds in front of what you need, and for five "
        "after it. The player needs that time to lock, so a take can’t be used from its first "
        "frame.",
    ),
)


def write(person: Person, instructor: Person, until: datetime) -> Story:
    """What somebody wrote, judged as the cast has it."""
    for each in WRITTEN:
        if each.sign_in_name == person.sign_in_name:
            at = (until - timedelta(days=each.ago)).replace(hour=19, minute=10)
            later = at + timedelta(minutes=9)
            yield later
            asked = ask(person, FREE_ANSWER, seed=seed_of(each.situation), now=at)
            attempt = submit(asked, {"text": each.text}, now=later)
            yield from read(attempt, each, instructor, at)


def seed_of(situation: str) -> int:
    return next(seed for seed in count() if FREE_ANSWER.make(seed).situation == situation)


def read(attempt: Attempt, written: WrittenAnswer, instructor: Person, at: datetime) -> Story:
    if not written.said:
        return
    yield at + timedelta(hours=20)
    what = Review.What.SENT_BACK if written.score is None else Review.What.SCORE
    key = f"demo-{written.sign_in_name}"
    said = Said(what=what, text=written.said, score=written.score, key=key)
    review(instructor, attempt, said, now=at + timedelta(hours=20))
    if written.reply:
        yield at + timedelta(hours=26)
        reply(attempt.person, attempt, written.reply, now=at + timedelta(hours=26))
