"""Watch it drift: takes in rehearsal; at which must tracking be touched first?"""

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.judging.rules import DRIFTS
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.set_tracking import off
from exercises.drills.kinds.set_tracking.meter import TrackingMeter, in_words
from exercises.drills.kinds.set_tracking.seen import seen
from exercises.drills.kinds.watch_it_drift.reel import DriftingReel
from exercises.drills.kinds.watch_it_drift.rehearsals import (
    NEVER,
    TAKES,
    Rehearsals,
    place,
    rehearsals,
)
from exercises.drills.kinds.watch_it_drift.verdict import grade
from exercises.drills.media.medium import PictureStrip, media
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Meter, Settings

METERED = 0.5
ACROSS = 4  # pictures in a row of the strip


def candidate(draw: Draw, settings: Settings) -> Question:
    return question(DriftingReel(draw, settings, TAKES), rehearsals(draw))


def question(reel: DriftingReel, watched: Rehearsals) -> Question:
    metered = reel.draw.chance(METERED) and Meter.TRACKING in reel.scene.settings.meters
    meter = TrackingMeter(top=reel.draw.whole(52, 96)) if metered else None
    right = NEVER if watched.due is None else value(watched.due)
    return Question(
        situation=f"{'steady' if watched.due is None else 'differing'}, "
        f"{'with a meter' if meter else 'without a meter'}",
        skill=DRIFTS.skill,
        asks=(
            Choice(
                name="step",
                legend="At which take would you touch the tracking first?",
                options=options(),
            ),
        ),
        shown=shown(reel, watched, meter),
        right={"step": right},
        reveals={"step": {} if right == NEVER else {NEVER: ["set-once"]}},
        rule=DRIFTS.at(reel.scene.bench),
        media=media(strip(reel, watched)),
        key={
            "session": reel.document(watched.tracking),
            "band": watched.band,
            "units": [off(each) for each in watched.tracking],
        },
    )


def options() -> tuple[Option, ...]:
    takes = (Option(value=value(take), text=place(take)) for take in range(TAKES))
    return (*takes, Option(value=NEVER, text="At none of them"))


def value(take: int) -> str:
    """A take as it is answered: counted from 1, as people do."""
    return str(take + 1)


def shown(reel: DriftingReel, watched: Rehearsals, meter: TrackingMeter | None) -> Json:
    readings = meter.readings(watched.tracking) if meter else ()
    return {
        "story": f"{opening(reel.scene)} {told(reel)}",
        "task": "Look at the rehearsals one after another. Which is the first at which you would "
        "touch the tracking, if any?",
        "facts": reel.facts(),
        "control": "The player’s tracking",
        "steps": [place(take) for take in range(TAKES)],
        "face": "tracking" if meter else "",
        "readings": list(readings),
        "meter": [f"Tracking meter: {in_words(each)}" for each in readings],
    }


def told(reel: DriftingReel) -> str:
    tape = reel.tape
    return reel.draw.pick(
        (
            f"Eight takes from {tape} follow one another. Tracking was set on the first, and each "
            "is rehearsed before it is recorded.",
            f"{tape} was shot over several days. Eight takes of it are wanted; tracking was set "
            "on the first, and each is rehearsed.",
            f"Two cameras shot {tape} by turns. Eight of its takes are rehearsed one by one; "
            "tracking was set on the first.",
        )
    )


def strip(reel: DriftingReel, watched: Rehearsals) -> PictureStrip:
    return PictureStrip(
        title="The monitor",
        words=tuple(map(seen, watched.tracking)),
        pictures=tuple(
            reel.picture(take, {"tracking": each}) for take, each in enumerate(watched.tracking)
        ),
        across=ACROSS,
    )


KIND = Kind(
    slug=slug_of(__name__),
    title="Watch it drift",
    purpose="Takes in rehearsal, one after another: which is the first that asks for tracking?",
    skills=("player-set-up",),
    lesson="setting-up-the-player",
    revision=2,
    template="drills/kinds/watch_it_drift.html",
    candidate=candidate,
    grade=grade,
)
