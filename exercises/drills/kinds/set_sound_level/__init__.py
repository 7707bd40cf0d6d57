"""Set the sound level: each take by hand, and what limiter and automatic gain make of it."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from exercises.drills.judging.rules import SOUND_LEVEL
from exercises.drills.kind import Kind, Verdict, slug_of
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.control import POSITIONS, place_in_words
from exercises.drills.kinds.knobs.copy import Copy
from exercises.drills.kinds.knobs.question import Knob
from exercises.drills.kinds.knobs.verdict import dial_of, graded, near
from exercises.drills.kinds.set_sound_level.heard import clips, number
from exercises.drills.kinds.set_sound_level.outcomes import (
    TEXTS,
    SettingWay,
    SoundOutcome,
    choice,
    outcome,
    revealed,
    setting,
)
from exercises.drills.kinds.set_sound_level.takes import TakeLevels, Takes
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Meter, Settings
from exercises.signal.meters.scale import in_words
from exercises.tape import SoundLevel, SoundMode

STEP = 5  # 0.1 dB that a position is
BAND = 10  # 0.1 dB (operating tolerance of levels, from memory; this course's own choice)
APART = (9, 19)  # positions between the settings of the two takes: 4.5 to 9.5 dB
PRESSED = (14, 19)  # of which a limiter takes so much that it is heard: 7 dB and more
EDGE = 3  # positions at either end that are never the best
# The best for a louder take lies no further up, and that for a softer one lies above it: louder
# ones come in three questions of five.
PARTING = 21
WELL_OVER = 3  # bands over line-up: where it is no misjudgement
ONE, HOT = "one-level-for-all", "hotter-is-better"

# What is to come of a way of holding the level, the way, and whether the second take is louder.
CASES: tuple[tuple[SoundOutcome, SettingWay, bool], ...] = (
    *((SoundOutcome.WELL, SettingWay.SET, louder) for louder in (True, False)),
    *((SoundOutcome.SWELLS, SettingWay.AUTOMATIC, louder) for louder in (True, False)),
    (SoundOutcome.SOFT, SettingWay.LEFT, False),
    (SoundOutcome.SOFT, SettingWay.LIMITED, False),
    *[(SoundOutcome.ROUGH, SettingWay.LEFT, True)] * 2,
    *[(SoundOutcome.PRESSED, SettingWay.LIMITED, True)] * 2,
)


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where the model says something else."""
    came, way, louder = draw.pick(CASES)
    apart = draw.whole(*(PRESSED if came is SoundOutcome.PRESSED else APART))
    takes = Takes(draw, settings, levels(draw, STEP * apart, louder=louder))
    best = best_of(draw, apart, louder=louder)
    return question(takes, way, came, best) if takes.are_two else None


def best_of(draw: Draw, apart: int, *, louder: bool) -> int:
    """Where the first take’s setting still has room beside it, and no place comes much more often
    than another.
    """
    last = POSITIONS - 1
    if louder:
        return draw.whole(EDGE, min(PARTING, last - apart))
    return draw.whole(max(PARTING + 1, apart), last - EDGE)


def levels(draw: Draw, apart: int, *, louder: bool) -> TakeLevels:
    under = draw.whole(350, 370)  # a room that automatic gain can still bring up
    if louder:
        first = draw.whole(-110, -100)
        return TakeLevels(first=first, second=first + apart, under=under)
    first = draw.whole(-30, 25)
    return TakeLevels(first=first, second=first - apart, under=under)


def question(takes: Takes, way: SettingWay, came: SoundOutcome, best: int) -> Question | None:
    levels, document = takes.levels, takes.document()
    gains = [STEP * (position - best) - levels.second for position in range(POSITIONS)]
    start = best + (levels.second - levels.first) // STEP
    other = SoundLevel(way.mode, gains[best if way is SettingWay.SET else start])
    copy = Copy(document, setting(other.mode, other.gain))
    if outcome(copy) is not came:
        return None
    readings = [levels.second + gain for gain in gains]
    asked = choice(way)
    knob = Knob(
        name="gain",
        control="The sound level",
        legend="Where does the sound level belong for the second take?",
        start=start,
        best=best,
        aim=Aim(values=tuple(readings), aim=0, band=BAND),
        session=document,
        makings=[setting(SoundMode.BY_HAND, gain) for gain in gains],
        units=[f"speech of the second take reaches {in_words(each)}" for each in readings],
        why="There the loudest words of the second take just reach 0 VU. "
        f"For the other question: {' '.join(copy.sentences()) or TEXTS[came] + '.'}",
        passes="The copy has no fault, but its speech is not where the first take’s is.",
        rule=SOUND_LEVEL,
        shown=clips(takes, gains, best, other),
        lures={str(at): [belief] for at, belief in lures(readings, start)},
        face="vu",
        readings=readings,
        meter=[f"Second take: {in_words(each)}" for each in readings],
        choices=(asked,),
        right={asked.name: came.value},
        reveals={asked.name: revealed(copy)},
    )
    return knob.question(
        f"{way.value}-{'louder' if levels.second > levels.first else 'softer'}",
        story=f"{opening(takes.scene)} Two answers of the keeper follow one another. The first is "
        f"laid: with the control {place_in_words(start)}, its loudest words just reached 0 VU.",
        task="Now set the level for the second take, which is an edit of its own. "
        "The meter shows what comes in, before a limiter or automatic gain.",
        facts=takes.facts(),
    )


def lures(readings: list[int], start: int) -> Iterator[tuple[int, str]]:
    """Positions that a belief leads to."""
    for position, reading in enumerate(readings):
        if abs(reading - readings[start]) <= BAND:
            yield position, ONE
        elif reading > WELL_OVER * BAND:
            yield position, HOT


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for what can't be answered."""
    question.checked(answer)
    position = answer[dial_of(question).name]
    verdict = graded(question, answer, question.key["makings"][position])
    other, best = len(question.media) - 2, len(question.media) - 1
    beside = [] if position == question.right[dial_of(question).name] else [number(position)]
    return replace(verdict, feedback={**verdict.feedback, "clips": [*beside, other, best]})


KIND = Kind(
    slug=slug_of(__name__),
    title="Set the sound level",
    purpose="Two takes at two levels: where does the control belong, and what does help do?",
    skills=("sound-level",),
    lesson="picture-and-sound-levels",
    revision=3,
    template="drills/kinds/set_sound_level.html",
    candidate=candidate,
    grade=grade,
    near=near,
    needs=frozenset({Meter.VU}),
)
