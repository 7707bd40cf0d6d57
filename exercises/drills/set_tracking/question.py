"""Set the tracking: a tape, a control, and what monitor and meter show at each position."""

from collections.abc import Iterator
from dataclasses import asdict

from exercises.drills.asks import Json
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.knobs.aim import Aim
from exercises.drills.knobs.control import best_of, dial, start_of
from exercises.drills.knobs.footage import FOOTAGE
from exercises.drills.knobs.job import Job
from exercises.drills.media import Strip, media
from exercises.drills.scene import opening
from exercises.drills.set_tracking.meter import in_words
from exercises.drills.set_tracking.seen import seen
from exercises.drills.set_tracking.version import Version, drawn
from exercises.tape.geometry import LOST, envelope_loss

ACROSS = 7
NAME = "tracking"


def make(seed: int) -> Question:
    return next(candidates(seed))


def candidates(seed: int) -> Iterator[Question]:
    """Whatever the seed draws is a question."""
    draw = Draw(seed)
    while True:
        version = drawn(draw)
        job = Job(draw, tuple(FOOTAGE))
        yield question(job, version(job, best_of(draw)))


def question(job: Job, version: Version) -> Question:
    start = start_of(job.draw, version.clear)
    return Question(
        situation=version.name,
        skill=version.rule.skill,
        asks=(
            dial(
                NAME,
                f"Where does the {version.machine}’s tracking belong?",
                start,
            ),
        ),
        shown=shown(job, version),
        right={NAME: version.best},
        reveals={NAME: version.lures},
        key={
            "session": job.document(),
            "makings": [{version.machine: {"tracking": each}} for each in version.setting],
            "aim": Aim(values=version.setting, aim=0, band=version.band).as_json(),
            "units": [off(each, version.machine) for each in version.setting],
            "why": version.why,
            "start": start if version.band else None,
            "passes": "The copy has no fault, but it is noisier than it need be, "
            "and a little drift will make one of it.",
            "rule": asdict(version.rule),
            "media": media(strip(job, version)),
        },
    )


def shown(job: Job, version: Version) -> Json:
    readings = version.meter.readings(version.picture) if version.meter else ()
    return {
        "story": f"{opening(job.scene)} {version.story}",
        "task": f"Turn the {version.machine}’s tracking, and watch. "
        "Then answer with the control where it belongs.",
        "facts": job.facts(),
        "control": f"The {version.machine}’s tracking",
        "face": "tracking" if version.meter else "",
        "readings": list(readings),
        "meter": [f"Tracking meter: {in_words(each)}" for each in readings],
    }


def strip(job: Job, version: Version) -> Strip:
    return Strip(
        title="The monitor",
        words=tuple(map(seen, version.picture)),
        pictures=tuple(job.picture({"tracking": each}) for each in version.picture),
        across=ACROSS,
    )


def off(tracking: int, machine: str) -> str:
    """A tracking error in words.

    >>> off(15, "player"), off(-5, "recorder")
    ('15 % of a track off: the heads’ signal is 1.4 dB down', '5 % of a track off')
    """
    if machine == "recorder":
        return f"{abs(tracking)} % of a track off" if tracking else "at its fixed position"
    if not tracking:
        return "along the middle of the tracks"
    loss = envelope_loss(tracking)
    told = "gone" if loss >= LOST else f"{loss / 10:.1f} dB down"
    return f"{abs(tracking)} % of a track off: the heads’ signal is {told}"
