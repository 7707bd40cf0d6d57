"""The drills that the demo's instructor wrote about her own tapes, and what was answered."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from random import Random

from course.cohorts.models import Cohort, Person
from exercises.demo.cast import Learner
from exercises.demo.in_order import Story
from exercises.desk.verbs import Text, publish, write
from exercises.drills.own import Described, DescribedEdits, Made, Recorded
from exercises.models import OwnDrill
from exercises.practice.attempts import ask, submit
from exercises.tape import SIDES

SECOND = 25
MINUTE = 60 * SECOND
TAPE = {"rate": "25", "length": 10 * MINUTE, "lock": 6, "erase_gap": 2}
BLACK = Recorded(start=0, end=MINUTE, what="black", name="black", pulses="anew")
WINCH = Recorded(start=MINUTE, end=MINUTE + 30 * SECOND, what="both", name="the winch", pulses="on")

GULL = Text(
    title="A gull over the winch",
    skill="replacing-inside-it",
    spec=Described(
        **TAPE,  # type: ignore[arg-type]
        story="Black was recorded for a minute, then the winch was assembled after it.",
        recorded=(BLACK, WINCH),
        source="Reel 4",
        takes=((5 * MINUTE, 5 * MINUTE + 40 * SECOND),),
        picture="a gull on the railing",
        sound="wind",
        tracks=("picture",),
        in_=5 * MINUTE + 10 * SECOND,
        out=5 * MINUTE + 16 * SECOND,
        at=MINUTE + 10 * SECOND,
        freed="nothing",
        wish="The gull is to be seen for six seconds; the winch goes on being heard.",
    ).as_json(),
)
TAKES = {"run_up": 10 * SECOND, "beyond": 5 * SECOND}
TUG = Text(
    title="What became of the tug",
    skill="continuing-a-master",
    spec=DescribedEdits(
        **TAPE,  # type: ignore[arg-type]
        story="The tape of last Saturday had a minute of black on it and was blank after that.",
        recorded=(BLACK,),
        edits=(
            Made(
                mode="assemble",
                meant=SIDES,
                at=MINUTE,
                end=MINUTE + 12 * SECOND,
                picture="the keeper lighting the lamps",
                sound="a match, and footsteps",
                purpose="The evening begins.",
                **TAKES,
            ),
            Made(
                mode="assemble",
                meant=SIDES,
                at=MINUTE + 12 * SECOND,
                end=MINUTE + 27 * SECOND,
                picture="a tug coming up the channel",
                sound="the tug’s horn",
                purpose="The tug wants to go through.",
                **TAKES,
            ),
            Made(
                mode="assemble",
                meant=SIDES,
                at=MINUTE + 4 * SECOND,
                end=MINUTE + 10 * SECOND,
                picture="the lamp close up",
                sound="the lamp’s hum",
                purpose="The lamp instead of the match, in the middle of the first shot.",
                **TAKES,
            ),
        ),
    ).as_json(),
)


def write_drills(instructor: Person, cohorts: list[Cohort], until: datetime) -> list[OwnDrill]:
    """Both, published to all cohorts."""
    written = until - timedelta(days=8)
    drills = [
        write(instructor, "mode", GULL, key="demo-gull", now=written),
        write(instructor, "bad-edit", TUG, key="demo-tug", now=written),
    ]
    for drill in drills:
        publish(drill, instructor, cohorts, now=until - timedelta(days=7))
    return drills


def answer_drills(
    person: Person, learner: Learner, drills: list[OwnDrill], until: datetime
) -> Iterator[Story]:
    """By what they believe, on the first day on which they practised after they were asked."""
    days = [ago for ago in sorted(learner.days, reverse=True) if ago < 7]
    draw = Random(f"{learner.sign_in_name} at the desk")
    for drill in drills if days else ():
        day = len(learner.days) - len(days)
        held = {belief for belief, until_day in learner.beliefs.items() if day < until_day}
        now = (until - timedelta(days=days[0])).replace(hour=17, minute=draw.randrange(60))
        yield answer(person, drill, held, now, timedelta(seconds=40 + draw.randrange(90)))


def answer(
    person: Person, drill: OwnDrill, held: set[str], now: datetime, thinking: timedelta
) -> Story:
    yield now + thinking
    asked = ask(person, drill.kind, seed=0, now=now)
    submit(asked, asked.kind.tells(asked.as_question()).answers(held)[0], now=now + thinking)
