"""What may have gone wrong with two takes of talk; each spoils it, or leaves it well."""

from collections.abc import Callable
from dataclasses import dataclass, replace

from exercises.drills.kinds.spot_by_ear.talk import IN_TWO, REACHES, Talk, TalkAtCut
from exercises.drills.setting.draw import Draw
from exercises.signal.sound.worn import CALM

CLEAN = 0.11  # share of the questions; each of the faults has much the same
LONG = 7  # frames: a word so long is missed when half of it is


@dataclass(frozen=True, slots=True)
class Situation:
    name: str
    spoil: Callable[[Talk], None]

    @property
    def is_fault(self) -> bool:
        return self not in WELL


def out_within_a_word(talk: Talk) -> None:
    side = talk.first
    word = next(span for _, span in reversed(side.line_words) if span.end - span.start >= LONG)
    side.out = word.start + (word.end - word.start) * talk.draw.whole(40, 60) // 100


def in_within_a_word(talk: Talk) -> None:
    side = talk.second
    word = next(span for _, span in side.line_words if span.end - span.start >= LONG)
    side.in_ = word.start + (word.end - word.start) * talk.draw.whole(40, 60) // 100


def saying_in_two(side: TalkAtCut, draw: Draw) -> None:
    """A line with a breath in its middle, in place of the one it had."""
    other = side.sound.lines[1]
    name = draw.pick([each for each in IN_TWO if each != other])
    side.sound = replace(side.sound, lines=(name, other))
    side.begin_at(side.sound.begin)


def breath_before_the_cut(talk: Talk) -> None:
    saying_in_two(talk.first, talk.draw)
    breath = talk.first.breaths[0]
    talk.first.out = breath.end - talk.draw.whole(0, 2)


def breath_after_the_cut(talk: Talk) -> None:
    saying_in_two(talk.second, talk.draw)
    breath = talk.second.breaths[0]
    talk.second.in_ = breath.start + talk.draw.whole(0, 2)


def falls(talk: Talk) -> None:
    level = talk.second.take["levels"]
    level["sound"] = talk.first.take["levels"]["sound"] - talk.draw.whole(60, 78)


def rises(talk: Talk) -> None:
    level = talk.first.take["levels"]
    level["sound"] = talk.second.take["levels"]["sound"] - talk.draw.whole(60, 78)


def too_weak(talk: Talk) -> None:
    gain = -talk.draw.whole(150, 220)
    for side in talk.sides:
        side.machines["sound_level"]["gain"] = gain


def too_loud(talk: Talk) -> None:
    gain = talk.draw.whole(90, 140)
    for side in talk.sides:
        side.machines["sound_level"]["gain"] = gain


def automatic(talk: Talk) -> None:
    """Long pauses, in which the gain comes up."""
    saying_in_two(talk.first, talk.draw)
    for side in talk.sides:
        side.machines["sound_level"]["mode"] = "automatic"
    talk.first.out += talk.scene.rate.nominal // 3


def pulses_jump(talk: Talk) -> None:
    talk.assembled, talk.joint = False, True


def no_run_up(talk: Talk) -> None:
    talk.second.begin_at(talk.draw.whole(500, 900))


def wiped(talk: Talk) -> None:
    talk.assembled, talk.wiping = False, True
    talk.reach = min(REACHES)  # no longer than what an assemble wipes


def take_ends(talk: Talk) -> None:
    """In the pause of the line, so that what follows was never there to copy."""
    saying_in_two(talk.first, talk.draw)
    talk.first.stops = talk.first.breaths[0].start - 1


def phrase_only(talk: Talk) -> None:
    """Out in the middle of a pause, well before the breath in it."""
    saying_in_two(talk.first, talk.draw)
    talk.first.out = talk.first.breaths[0].start - 1


def limited(talk: Talk) -> None:
    for side in talk.sides:
        side.machines["sound_level"] = {"mode": "limiter", "gain": 10}


def a_little_apart(talk: Talk) -> None:
    talk.second.take["levels"]["sound"] = talk.first.take["levels"]["sound"] - 15


def copied_once_more(talk: Talk) -> None:
    for side in talk.sides:
        side.take["generation"] = 3


def worn(talk: Talk) -> None:
    """One of the tapes has a bad edge: its sound dips wherever it is played."""
    side = talk.draw.pick(talk.sides)
    at_cut = side.out if side is talk.first else side.in_
    since = round(at_cut * 1000 / side.rate.fraction) - talk.draw.pick(CALM)
    side.sound = replace(side.sound, worn=since)


def well(talk: Talk) -> None:
    """Nothing is spoilt."""


WORN = Situation("a worn source tape", worn)
FAULTS = (
    Situation("edit out within a word", out_within_a_word),
    Situation("edit in within a word", in_within_a_word),
    Situation("breath left before the cut", breath_before_the_cut),
    Situation("breath left after the cut", breath_after_the_cut),
    Situation("level falls at the cut", falls),
    Situation("level rises at the cut", rises),
    Situation("sound level too low", too_weak),
    Situation("sound level too high", too_loud),
    Situation("automatic gain on", automatic),
    Situation("black recorded in two goes", pulses_jump),
    Situation("take used without run-up", no_run_up),
    Situation("next shot wiped by an assemble", wiped),
    Situation("take ends before the edit out", take_ends),
)
WELL = (
    Situation("a clean cut", well),
    Situation("a clean cut between two phrases", phrase_only),
    Situation("a limiter, well set", limited),
    Situation("levels a little apart", a_little_apart),
    Situation("a clean cut of third generation", copied_once_more),
)


# What is wrong is drawn first, so that none is right much more often than another.
GROUPS = (
    FAULTS[0:2],
    FAULTS[2:4],
    FAULTS[4:6],
    *((each,) for each in FAULTS[6:9]),
    FAULTS[9:11],
    FAULTS[11:13],
    (WORN,),
)


def drawn(draw: Draw) -> Situation:
    return draw.pick(WELL if draw.chance(CLEAN) else draw.pick(GROUPS))
