"""What the demo's learners did at the practice bench, by the hands of the guide."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from course.cohorts.models import Person
from exercises.bench.verbs import begin, do
from exercises.demo.in_order import Story
from exercises.worktop.guide import guided
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals


@dataclass(frozen=True, kw_only=True)
class AtBench:
    """A practical that somebody did so many days ago, leaving out the actions of `without`.

    `unfinished` is how many actions were left to do when they went.
    """

    sign_in_name: str
    practical: str
    ago: int
    without: frozenset[str] = frozenset()
    unfinished: int = 0


AT_BENCH = (
    AtBench(
        sign_in_name="wren",
        practical="three-shots",
        ago=8,
        without=frozenset({"tracking", "skew", "rehearse"}),
    ),
    AtBench(sign_in_name="wren", practical="line-up", ago=1, unfinished=9),
    AtBench(sign_in_name="sorrel", practical="three-shots", ago=3),
)


def at_bench(person: Person, until: datetime) -> list[Story]:
    """Each run that is told of them."""
    told = (each for each in AT_BENCH if each.sign_in_name == person.sign_in_name)
    return [run(person, each, until - timedelta(days=each.ago)) for each in told]


def run(person: Person, told: AtBench, day: datetime) -> Story:
    """One action every twenty seconds, from five o'clock on."""
    now = day.replace(hour=17, minute=5, second=0, microsecond=0)
    yield now
    made = begin(person, practicals()[told.practical], Way.ALONE, now=now)
    steps = [step for step, _ in guided(made.worktop.set_up) if step.name not in told.without]
    for step in steps[: len(steps) - told.unfinished]:
        now += timedelta(seconds=20)
        yield now
        do(made, made.done, step.name, step.arguments, now=now)
