"""Set the picture level by the waveform display."""

from math import log10

from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.control import POSITIONS, start_of
from exercises.drills.kinds.knobs.job import KnobJob
from exercises.drills.kinds.knobs.question import Knob
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_picture_level.version import Version, drawn
from exercises.drills.kinds.set_picture_level.white import looks, reached, seen
from exercises.drills.media.medium import PictureStrip
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Meter, Settings
from exercises.signal.lines import Lines
from exercises.tape.levels import WHITE, gained

EDGE = 3  # positions at either end that are never the best
STEP = 2  # 0.1 dB that a position is
BAND = 2.5  # IRE (operating tolerance, from memory; this course's own choice)
WEAKEST, STRONGEST = 68, 108  # IRE of white that a source carries
WELL_OVER = 3  # bands over white: where it is no misjudgement
ACROSS = 7  # pictures in a row of the strip


def candidate(draw: Draw, settings: Settings) -> Question:
    version = drawn(draw)
    job = KnobJob(draw, settings, version.shots)
    source = draw.whole(WEAKEST, STRONGEST)
    best = draw.whole(EDGE, POSITIONS - 1 - EDGE)
    return question(job, version, source, best)


def question(job: KnobJob, version: Version, source: int, best: int) -> Question:
    needed = round(-200 * log10(source / WHITE))  # 0.1 dB
    gains = [needed + STEP * (position - best) for position in range(POSITIONS)]
    whites = tuple(round(gained(source, gain), 1) for gain in gains)
    aim = Aim(values=whites, aim=WHITE, band=BAND)
    card = version.card(job.lines)
    knob = Knob(
        name="level",
        control="The picture level",
        legend="Where does the picture level belong?",
        start=start_of(job.draw, best),
        best=best,
        aim=aim,
        session=job.document({"white": source}),
        makings=[{"picture_level": {"gain": gain}} for gain in gains],
        units=[unit(version, white, job.lines) for white in whites],
        why=version.why(job.lines),
        passes="The copy has no fault, but its white is not where the next shot’s will be.",
        rule=version.rule,
        shown=tuple(strip(job, version, source, gains, display) for display in version.displays),
        lures={
            str(position): [belief]
            for position, white in enumerate(whites)
            if not aim.is_right(position) and (belief := misled(version, white, job.lines))
        },
    )
    return knob.question(
        version.name,
        story=f"{opening(job.scene)} {version.story(job)}",
        task="Turn the recorder’s picture level by hand, and watch. "
        "Then answer with the control where it belongs.",
        facts=[*job.facts(), *([["On the card", card]] if card else [])],
    )


def unit(version: Version, white: float, lines: Lines) -> str:
    what = "white bar" if version.bars else "white"
    return reached(version.shown(white, lines), lines, what)


def misled(version: Version, white: float, lines: Lines) -> str:
    """The belief that would set a white there; none for a mere misjudgement."""
    if version.bars and is_white(version.shown(white, lines)):
        return "bars-are-alike"
    if version.contrast and is_white(version.looked(white)):
        return "monitor-is-a-meter"
    return "hotter-is-better" if white > WHITE + WELL_OVER * BAND else ""


def is_white(white: float) -> bool:
    return abs(white - WHITE) <= BAND


def strip(
    job: KnobJob, version: Version, source: int, gains: list[int], display: str
) -> PictureStrip:
    """One display at every position; the words are about the white in it."""
    whites = [gained(source, gain) for gain in gains]
    waveform = display == "waveform"
    return PictureStrip(
        title="The waveform display" if waveform else "The monitor",
        words=tuple(
            seen(version.shown(white, job.lines), job.lines, version.what)
            if waveform
            else looks(version.looked(white))
            for white in whites
        ),
        pictures=tuple(
            job.picture({"source": float(source), "gain": gain / 10}, display=display)
            for gain in gains
        ),
        across=ACROSS,
    )


KIND = Kind(
    slug=slug_of(__name__),
    title="Set the picture level",
    purpose="Turn the picture level until white stands where it belongs on the waveform.",
    skills=("picture-level",),
    lesson="picture-and-sound-levels",
    revision=4,
    template="drills/kinds/knobs/knob.html",
    candidate=candidate,
    grade=grade,
    near=near,
    needs=frozenset({Meter.WAVEFORM}),
)
