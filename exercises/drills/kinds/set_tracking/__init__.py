"""Set the tracking: by the meter, by the picture, against a meter that misleads."""

from collections.abc import Sequence

from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.control import best_of, start_of
from exercises.drills.kinds.knobs.job import KnobJob
from exercises.drills.kinds.knobs.question import Knob
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_tracking.meter import in_words
from exercises.drills.kinds.set_tracking.seen import seen
from exercises.drills.kinds.set_tracking.version import Version, drawn
from exercises.drills.media.medium import PictureStrip
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import FOOTAGE
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Meter, Settings
from exercises.tape.geometry import LOST, envelope_loss

ACROSS = 7  # pictures in a row of the strip
PASSES = (
    "The copy has no fault, but it is noisier than it need be, "
    "and a little drift will bring streaks."
)


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where it needs a meter that isn't there."""
    version = drawn(draw)
    job = KnobJob(draw, settings, tuple(FOOTAGE))
    made = version(job, best_of(draw))
    there = made.meter is None or Meter.TRACKING in settings.meters
    return question(job, made) if there else None


def question(job: KnobJob, version: Version) -> Question:
    machine, meter = version.machine, version.meter
    readings = meter.readings(version.picture) if meter else ()
    knob = Knob(
        name="tracking",
        control=f"The {machine}’s tracking",
        legend=f"Where does the {machine}’s tracking belong?",
        start=start_of(job.draw, version.clear) if version.start is None else version.start,
        best=version.best,
        aim=Aim(values=version.setting, aim=0, band=version.band),
        session=job.document(),
        makings=[{machine: {"tracking": each}} for each in version.setting],
        units=[off(each, machine) for each in version.setting],
        why=version.why,
        passes=PASSES,
        rule=version.rule,
        shown=(strip(job, version.picture),),
        lures=version.lures,
        face="tracking" if meter else "",
        readings=readings,
        meter=[f"Tracking meter: {in_words(each)}" for each in readings],
    )
    return knob.question(
        version.name,
        story=f"{opening(job.scene)} {version.story}",
        task=f"Turn the {machine}’s tracking, and watch. "
        "Then answer with the control where it belongs.",
        facts=job.facts(),
    )


def strip(job: KnobJob, tracking: Sequence[int], *, display: str = "monitor") -> PictureStrip:
    """The picture at every position."""
    return PictureStrip(
        title=f"The {display}" if display == "monitor" else f"The {display} display",
        words=tuple(
            seen(each) if display == "monitor" else seen(each, hidden=0) for each in tracking
        ),
        pictures=tuple(job.picture({"tracking": each}, display=display) for each in tracking),
        across=ACROSS,
    )


def off(tracking: int, machine: str = "player") -> str:
    """A tracking error in words.

    >>> off(15), off(-5, "recorder")
    ('15 % of a track off: the heads’ signal is 1.4 dB down', '5 % of a track off')
    """
    if machine == "recorder":
        return f"{abs(tracking)} % of a track off" if tracking else "at its fixed position"
    if not tracking:
        return "along the middle of the tracks"
    loss = envelope_loss(tracking)
    told = "gone" if loss >= LOST else f"{loss / 10:.1f} dB down"
    return f"{abs(tracking)} % of a track off: the heads’ signal is {told}"


KIND = Kind(
    slug=slug_of(__name__),
    title="Set the tracking",
    purpose="Turn a machine’s tracking to where it belongs, by meter and picture.",
    skills=("player-set-up", "recorder-set-up"),
    lesson="setting-up-the-player",
    revision=4,
    template="drills/kinds/knobs/knob.html",
    candidate=candidate,
    grade=grade,
    near=near,
)
