"""Watch it drift: twelve looks at a minute of tape, and the first that asks for a hand."""

from collections.abc import Iterator

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.knobs.copy import made_so
from exercises.drills.knobs.footage import FOOTAGE
from exercises.drills.knobs.job import Job
from exercises.drills.media import Strip, media
from exercises.drills.rules import DRIFTS
from exercises.drills.scene import opening
from exercises.drills.set_tracking.meter import Meter, in_words
from exercises.drills.set_tracking.question import off
from exercises.drills.set_tracking.seen import seen
from exercises.drills.settings import Meter as BenchMeter
from exercises.drills.settings import Settings
from exercises.drills.watch_it_drift.minute import EVERY, SECONDS, STEPS, Minute, minute

STEADY = 0.25  # of the questions: tracking stays well within what passes
LITTLE, MUCH = (2, 5), (9, 15)  # percent of a track that it may wander in a second
METERED = 0.5
ACROSS = 4  # pictures in a row of the strip
NEVER = "never"


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where it is in doubt which step it is."""
    draw = Draw(seed)
    steady = draw.chance(STEADY)
    while True:
        job = Job(draw, settings, tuple(FOOTAGE), low=SECONDS, high=SECONDS + 0.5)
        watched = minute(draw, job.scene.rate, wander=draw.whole(*(LITTLE if steady else MUCH)))
        plain = watched.is_plain and (watched.due is None) == steady
        yield question(job, watched) if plain else None


def question(job: Job, watched: Minute) -> Question:
    metered = job.draw.chance(METERED) and BenchMeter.TRACKING in job.scene.settings.meters
    meter = Meter(top=job.draw.whole(52, 96)) if metered else None
    right = NEVER if watched.due is None else value(watched.due)
    return Question(
        situation=f"{'steady' if watched.due is None else 'wandering'}, "
        f"{'with a meter' if meter else 'without a meter'}",
        skill=DRIFTS.skill,
        asks=(
            Choice(
                name="step",
                legend="At which step must tracking be touched again?",
                options=options(),
            ),
        ),
        shown=shown(job, watched, meter),
        right={"step": right},
        reveals={"step": {} if right == NEVER else {NEVER: ["set-once"]}},
        key={
            "session": made_so(job.document(), watched.making()),
            "units": [off(each) for each in watched.steps],
            "rule": DRIFTS.at(job.scene.bench),
            "media": media(strip(job, watched)),
        },
    )


def options() -> tuple[Option, ...]:
    steps = (Option(value=value(step), text=place(step)) for step in range(STEPS))
    return (*steps, Option(value=NEVER, text="Not at all in this minute"))


def value(step: int) -> str:
    """A step as it is answered: counted from 1, as people do."""
    return str(step + 1)


def place(step: int) -> str:
    """Which step, and when.

    >>> place(3)
    'Step 4, after 15 seconds'
    """
    return f"Step {step + 1}, after {step * EVERY} seconds" if step else "Step 1, at the start"


def shown(job: Job, watched: Minute, meter: Meter | None) -> Json:
    readings = meter.readings(watched.steps) if meter else ()
    return {
        "story": f"{opening(job.scene)} {told(job)}",
        "task": "A noise band must not get onto the edit master. "
        "Go through the steps: which is the first that shows one, if any does?",
        "facts": job.facts(),
        "control": "The copy",
        "steps": [place(step) for step in range(STEPS)],
        "face": "tracking" if meter else "",
        "readings": list(readings),
        "meter": [f"Tracking meter: {in_words(each)}" for each in readings],
    }


def told(job: Job) -> str:
    tape = job.clip.tape
    return job.draw.pick(
        (
            f"Tracking was set on {tape}, and a minute of it is being copied.",
            f"A long shot from {tape} is being copied. Tracking was set before it began.",
            f"Tracking was right when the copy from {tape} began.",
        )
    )


def strip(job: Job, watched: Minute) -> Strip:
    pace = EVERY * job.scene.rate.nominal
    return Strip(
        title="The monitor",
        words=tuple(map(seen, watched.steps)),
        pictures=tuple(
            job.picture({"tracking": each}, frame=step * pace)
            for step, each in enumerate(watched.steps)
        ),
        across=ACROSS,
    )
