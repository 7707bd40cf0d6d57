"""Skew or tracking: tell which control a picture asks for, and turn it to its best position."""

from collections.abc import Callable

from exercises.drills.asks import Choice, Option
from exercises.drills.judging.rules import NO_BAND, STRAIGHT
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds import set_tracking
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.control import POSITIONS, best_of, start_of
from exercises.drills.kinds.knobs.job import KnobJob
from exercises.drills.kinds.knobs.question import Knob
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_skew.seen import DISPLAYS, named, seen, step
from exercises.drills.kinds.set_tracking.version import BAND, errors, where_seen
from exercises.drills.media.medium import PictureStrip
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import UPRIGHT
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Settings

# The controls that a picture may ask for.
TRACKING, SKEW = "tracking", "skew"

CONTROLS = Choice(
    name="control",
    legend="Which control is it?",
    options=(
        Option(value=TRACKING, text="The player’s tracking"),
        Option(value=SKEW, text="The player’s skew"),
    ),
)

STEP = 3  # 0.1 µs that a position is
SKEW_BAND = 6  # 0.1 µs (this course's own choice, below the model's limit)
ACROSS = 7  # pictures in a row of the strip

Made = Callable[[KnobJob, int], Knob]


def candidate(draw: Draw, settings: Settings) -> Question:
    situation, knob_of, display = draw.pick(DRAWN)
    job = KnobJob(draw, settings, UPRIGHT)
    return knob_of(job, best_of(draw)).question(
        situation,
        story=f"{opening(job.scene)} {arrived(job)} It is looked at on {DISPLAYS[display]}.",
        task="Something is not as it should be. Turn the control, and watch. "
        "Which control is it, and where does it belong?",
        facts=job.facts(),
    )


def skew_on(display: str) -> Made:
    """The skew control, on a display."""

    def knob(job: KnobJob, best: int) -> Knob:
        values = tuple(STEP * (position - best) for position in range(POSITIONS))
        return Knob(
            name="position",
            control="The control",
            legend="Where does it belong?",
            start=start_of(job.draw, best),
            best=best,
            aim=Aim(values=values, aim=0, band=SKEW_BAND),
            session=job.document(),
            makings=[{"player": {"skew": each}} for each in values],
            units=list(map(step, values)),
            why="There the step where the heads change over is gone, and verticals stand upright.",
            passes="The copy has no fault, but its verticals lean a little at the upper edge.",
            rule=STRAIGHT,
            shown=(
                PictureStrip(
                    title=named(display),
                    words=tuple(seen(each, job.lines, display) for each in values),
                    pictures=tuple(
                        job.picture({"skew": each / 10}, display=display) for each in values
                    ),
                    across=ACROSS,
                ),
            ),
            lures={},
            choices=(CONTROLS,),
            right={CONTROLS.name: SKEW},
            reveals={CONTROLS.name: revealed(SKEW)},
        )

    return knob


def tracking_on(display: str) -> Made:
    """The tracking control, for who takes one for the other."""

    def knob(job: KnobJob, best: int) -> Knob:
        values = errors(best)
        return Knob(
            name="position",
            control="The control",
            legend="Where does it belong?",
            start=start_of(job.draw, best),
            best=best,
            aim=Aim(values=values, aim=0, band=BAND),
            session=job.document(),
            makings=[{"player": {"tracking": each}} for each in values],
            units=list(map(set_tracking.off, values)),
            why=f"There the heads run along the middle of the tracks, {where_seen(best)}.",
            passes=set_tracking.PASSES,
            rule=NO_BAND,
            shown=(set_tracking.strip(job, values, display=display),),
            lures={},
            choices=(CONTROLS,),
            right={CONTROLS.name: TRACKING},
            reveals={CONTROLS.name: revealed(TRACKING)},
        )

    return knob


# Each control as often as the other, on each display as often as on the other.
DRAWN: tuple[tuple[str, Made, str], ...] = (
    ("skew-on-underscan", skew_on("underscan"), "underscan"),
    ("skew-on-cross-pulse", skew_on("cross-pulse"), "cross-pulse"),
    ("tracking-on-underscan", tracking_on("underscan"), "underscan"),
    ("tracking-on-cross-pulse", tracking_on("cross-pulse"), "cross-pulse"),
)


def revealed(right: str) -> dict[str, list[str]]:
    """What taking the wrong control reveals."""
    swapped = SKEW if right == TRACKING else TRACKING
    return {swapped: ["tracking-skew-swapped"]}


def arrived(job: KnobJob) -> str:
    tape = job.clip.tape
    return job.draw.pick(
        (
            f"{tape} was recorded on another machine.",
            f"{tape} was shot with a borrowed camera.",
            f"{tape} has been played many times.",
            f"{tape} was copied for the film in another workshop.",
        )
    )


KIND = Kind(
    slug=slug_of(__name__),
    title="Set the skew",
    purpose="Skew or tracking? Tell which control the picture asks for, and turn it.",
    skills=("player-set-up",),
    lesson="setting-up-the-player",
    revision=6,
    template="drills/kinds/knobs/knob.html",
    candidate=candidate,
    grade=grade,
    near=near,
)
