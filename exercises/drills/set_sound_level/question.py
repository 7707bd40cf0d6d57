"""Set the sound level: two takes, one setting, and what the meter says at each position."""

from collections.abc import Callable, Iterator

from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.knobs.aim import Aim
from exercises.drills.knobs.control import POSITIONS, best_of, start_of
from exercises.drills.knobs.question import Knob
from exercises.drills.rules import SOUND_LEVEL
from exercises.drills.scene import opening
from exercises.drills.set_sound_level.heard import clips
from exercises.drills.set_sound_level.modes import MODES, WHY, least, revealed, setting
from exercises.drills.set_sound_level.takes import Levels, Takes
from exercises.drills.settings import Settings
from exercises.signal.meters.scale import in_words

STEP = 5  # 0.1 dB that a position is
BAND = 10  # 0.1 dB (operating tolerance of levels, from memory; this course's own choice)
LOUDEST = 25  # 0.1 dB: a source that is louder is distorted already
WELL_OVER = 3  # bands over line-up: where it is no misjudgement


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where nothing leaves the copy faultless."""
    draw = Draw(seed)
    while True:
        name, story, levels_of = draw.pick(SITUATIONS)
        takes = Takes(draw, settings, levels_of(draw))
        yield question(takes, name, story, best_of(draw)) if takes.are_two else None


def question(takes: Takes, name: str, story: str, best: int) -> Question | None:
    levels, document = takes.levels, takes.document()
    gains = [STEP * (position - best) - levels.first for position in range(POSITIONS)]
    mode = least(document, gains[best])
    if mode is None:
        return None
    readings = [levels.first + gain for gain in gains]
    knob = Knob(
        name="gain",
        control="The sound level",
        legend="Where does the sound level belong?",
        start=start_of(takes.draw, best),
        best=best,
        aim=Aim(values=tuple(readings), aim=0, band=BAND),
        session=document,
        makings=[setting(mode, gain) for gain in gains],
        units=[f"speech of the first take reaches {in_words(each)}" for each in readings],
        why=f"There the speech of the first take just reaches 0 VU. {WHY[mode]}",
        passes="The copy has no fault, but its speech is not where the next edit’s will be.",
        rule=SOUND_LEVEL,
        shown=clips(takes, gains, best, mode),
        lures={
            str(position): ["hotter-is-better"]
            for position, reading in enumerate(readings)
            if reading > WELL_OVER * BAND
        },
        face="vu",
        readings=readings,
        meter=[meter(levels, gain) for gain in gains],
        choices=(MODES,),
        right={MODES.name: mode},
        reveals={MODES.name: dict(revealed(mode))},
    )
    return knob.question(
        name,
        story=f"{opening(takes.scene)} {story}",
        task="The meter shows what comes in, before a limiter or automatic gain. Set the level "
        "by the first take, say how it is to be held, and leave it so for both.",
        facts=takes.facts(),
    )


def meter(levels: Levels, gain: int) -> str:
    first, second = in_words(levels.first + gain), in_words(levels.second + gain)
    return f"First take: {first}; second take: {second}"


def alike(draw: Draw) -> Levels:
    first = draw.whole(-60, 40)
    return Levels(
        first=first, second=first + draw.whole(-10, 10), room=first - draw.whole(380, 440)
    )


def louder(draw: Draw) -> Levels:
    first = draw.whole(-110, -60)
    second = min(LOUDEST, first + draw.whole(70, 120))
    return Levels(first=first, second=second, room=first - draw.whole(380, 440))


def softer(draw: Draw) -> Levels:
    first = draw.whole(-30, 40)
    return Levels(
        first=first, second=first - draw.whole(110, 150), room=first - draw.whole(590, 660)
    )


SITUATIONS: tuple[tuple[str, str, Callable[[Draw], Levels]], ...] = (
    ("alike", "Two answers of the keeper go in, one after the other.", alike),
    (
        "louder",
        "Two answers of the keeper go in, one after the other; in the second he calls out.",
        louder,
    ),
    (
        "softer",
        "Two answers of the keeper go in, one after the other; in the second he has turned away. "
        "Both were spoken in a very quiet room.",
        softer,
    ),
)
