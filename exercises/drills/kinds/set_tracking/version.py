"""The versions of the drill: which control, what shows it, and what leads astray."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field

from exercises.drills.judging.rules import FIXED_POSITION, TRACKING_MIDWAY, TRACKING_PEAK, Rule
from exercises.drills.kinds.knobs.control import MIDDLE, PLACES, POSITIONS, best_of, start_of
from exercises.drills.kinds.knobs.job import KnobJob
from exercises.drills.kinds.set_tracking.meter import TrackingMeter, in_words
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.quay_street import TAPES

STEP = 5  # percent of a track that a position is
BAND = 12  # percent of a track: the heads' signal is 1.1 dB down (this course's own choice)
ASIDE = 4  # positions that a tape looks best beside the recorder's fixed position, at least

STREAKS = 50  # percent of a track off, from which on a monitor shows streaks
BESIDE = (15, 17)  # positions between the meter's own peak and a second one

Reveals = dict[str, list[str]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Version:
    """`clear` is where the picture is best, `best` where the control belongs.

    `lures` are the positions that a belief leads to; `start` is where the control stands at
    first, where that is not left to the draw.
    """

    name: str
    machine: str
    clear: int
    best: int
    story: str
    why: str
    rule: Rule = TRACKING_PEAK
    band: int = BAND
    meter: TrackingMeter | None = None
    start: int | None = None
    lures: Reveals = field(default_factory=dict)

    @property
    def picture(self) -> tuple[int, ...]:
        """Percent of a track that the heads which make the picture are off, by position."""
        return errors(self.clear)

    @property
    def setting(self) -> tuple[int, ...]:
        """The same, of what the model is told."""
        return errors(self.best)


def errors(best: int) -> tuple[int, ...]:
    return tuple(max(-100, min(100, STEP * (position - best))) for position in range(POSITIONS))


def where_seen(clear: int) -> str:
    """How the picture alone tells where it is best."""
    if STREAKS // STEP <= clear < POSITIONS - STREAKS // STEP:
        return "midway between the streaks that begin on either side"
    return "where the fine noise is least; the streaks of one side lie beyond the control’s end"


def metered(job: KnobJob, clear: int) -> Version:
    """A meter that tells the truth."""
    return Version(
        name="by-the-meter",
        machine="player",
        clear=clear,
        best=clear,
        story=f"{came(job)} The player’s meter shows how strong the heads’ signal is.",
        why="There the meter is at its peak and the heads run along the middle of the tracks.",
        meter=TrackingMeter(top=job.draw.whole(52, 96)),
    )


def marked(job: KnobJob, clear: int) -> Version:
    """The same, and a mark that was right on another tape."""
    draw = job.draw
    meter = TrackingMeter(top=draw.whole(70, 98))
    other = draw.pick([tape for tape in TAPES if tape != job.clip.tape])
    mark = meter.at(draw.pick((25, 30, 35)))
    at_mark = nearest(meter.readings(errors(clear)), mark)
    return Version(
        name="another-tapes-mark",
        machine="player",
        clear=clear,
        best=clear,
        story=f"{came(job)} On {other}, which came before it, the meter stood "
        f"at {in_words(mark)} when tracking was right.",
        why=f"There this tape’s signal is at its peak. That {other} peaked "
        f"at {in_words(mark)} says nothing of {job.clip.tape}: each tape has a peak of its own.",
        meter=meter,
        lures={each: ["meter-mark"] for each in at_mark},
    )


def hidden(job: KnobJob, clear: int) -> Version:
    """Nothing but the picture."""
    return Version(
        name="without-a-meter",
        machine="player",
        clear=clear,
        best=clear,
        story=f"{came(job)} The player has no tracking meter: the picture alone tells.",
        why=f"It is {where_seen(clear)}.",
        rule=TRACKING_MIDWAY,
    )


def stuck(job: KnobJob, clear: int) -> Version:
    """A needle that stays where it is, whatever the control does."""
    start = start_of(job.draw, clear)
    near = [str(each) for each in (start, start - 1, start + 1) if 0 <= each < POSITIONS]
    return Version(
        name="stuck-meter",
        machine="player",
        clear=clear,
        best=clear,
        start=start,
        story=f"{came(job)} The player’s meter shows how strong the heads’ signal is.",
        why="The needle does not move, so the meter is stuck and tells nothing. "
        f"The picture says where the heads are right: {where_seen(clear)}.",
        meter=TrackingMeter(top=job.draw.whole(52, 96), stuck=True),
        lures={each: ["meter-beats-picture"] for each in near},
    )


def second_peak(job: KnobJob, clear: int) -> Version:
    """A control that stands near a second, lower peak of the meter."""
    draw = job.draw
    side = 1 if clear < MIDDLE else -1
    peak = clear + side * draw.whole(*BESIDE)
    near = [str(each) for each in (peak, peak - 1, peak + 1) if 0 <= each < POSITIONS]
    return Version(
        name="second-peak",
        machine="player",
        clear=clear,
        best=clear,
        start=peak - side * draw.pick((-2, 2)),
        story=f"{came(job)} The player’s meter shows how strong the heads’ signal is.",
        why=f"The meter has a second, lower peak {PLACES[peak]}; there the picture is full of "
        f"noise. The picture decides: it is right {where_seen(clear)}.",
        meter=TrackingMeter(top=draw.whole(64, 96), second=STEP * (peak - clear)),
        lures={each: ["meter-beats-picture"] for each in near},
    )


def recorder(job: KnobJob, clear: int) -> Version:
    """The control of the machine that is to record, and a tape that looks best elsewhere."""
    tape = job.clip.tape
    fixed = best_of(job.draw)
    while abs(fixed - clear) < ASIDE:
        fixed = best_of(job.draw)
    near = [str(each) for each in (clear, clear - 1, clear + 1)]
    start = start_of(job.draw, clear)
    while abs(fixed - start) < ASIDE:
        start = start_of(job.draw, clear)
    return Version(
        name="the-recorders-control",
        machine="recorder",
        clear=clear,
        best=fixed,
        start=start,
        story=f"To look through {tape}, it was played on the recorder, and that is "
        f"what the monitor shows. The recorder’s tracking has its fixed position {PLACES[fixed]}, "
        "with a click. Next, the recorder is to record; the player is set already.",
        why="That is the recorder’s fixed position. A tape from elsewhere may well look best "
        f"{PLACES[clear]}, but its tracks are not those that are to be laid.",
        rule=FIXED_POSITION,
        band=0,
        lures={each: ["tune-the-recorder"] for each in near},
    )


VERSIONS: dict[Callable[[KnobJob, int], Version], int] = {
    metered: 3,
    marked: 2,
    hidden: 2,
    stuck: 1,
    second_peak: 1,
    recorder: 1,
}
DRAWN = tuple(version for version, weight in VERSIONS.items() for _ in range(weight))


def drawn(draw: Draw) -> Callable[[KnobJob, int], Version]:
    return draw.pick(DRAWN)


def came(job: KnobJob) -> str:
    tape = job.clip.tape
    return job.draw.pick(
        (
            f"{tape} was recorded on another machine.",
            f"{tape} came in from outside the workshop.",
            f"Nobody has played {tape} on this bench yet.",
            f"{tape} was shot with a borrowed recorder.",
            f"{tape} is new on this bench.",
        )
    )


def nearest(readings: tuple[int, ...], mark: int) -> Iterator[str]:
    """The positions on either side of the peak whose reading is the mark, or next to it."""
    top = readings.index(max(readings))
    for side in (range(top + 1), range(top, len(readings))):
        yield str(min(side, key=lambda each: abs(readings[each] - mark)))
