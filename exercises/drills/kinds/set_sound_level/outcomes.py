"""Ways of holding a second take’s level, and what the tape model says comes of each."""

from collections.abc import Collection, Mapping
from enum import StrEnum

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.beliefs import LEVEL_BELIEFS, levelled
from exercises.drills.kinds.knobs.copy import Copy
from exercises.tape import Kind, SoundMode, faults

SECOND = 1  # the edit that is asked about


class Way(StrEnum):
    SET = "set"
    LEFT = "left"
    LIMITED = "limited"
    AUTOMATIC = "automatic"

    @property
    def mode(self) -> SoundMode:
        if self is Way.AUTOMATIC:
            return SoundMode.AUTOMATIC
        return SoundMode.BY_HAND if self is Way.LEFT else SoundMode.LIMITER

    @property
    def legend(self) -> str:
        return LEGENDS[self]


LEGENDS = {
    Way.SET: "Once the control stands where it belongs, with the limiter on: "
    "what comes of the second take?",
    Way.LEFT: "Before you turn it: left where it is, what would come of the second take?",
    Way.LIMITED: "Before you turn it: left where it is, with the limiter on, "
    "what would come of the second take?",
    Way.AUTOMATIC: "Before you turn it: left where it is, with automatic gain on, "
    "what would come of the second take?",
}


class Outcome(StrEnum):
    WELL = "well"
    SWELLS = "swells"
    SOFT = "soft"
    ROUGH = "rough"
    PRESSED = "pressed"


TEXTS = {
    Outcome.WELL: "Its words reach 0 VU, and the room stays low in the pauses",
    Outcome.SWELLS: "Its words reach 0 VU, and the room comes up in the pauses",
    Outcome.SOFT: "Its words stay softer than those of the first take",
    Outcome.ROUGH: "Its words are louder than the tape can hold, and rough",
    Outcome.PRESSED: "All its words are held down, and sound flat and pressed",
}
# The worst first: what is distorted jumps as well.
SHOWN_BY = {
    Kind.NOISY_PAUSES: Outcome.SWELLS,
    Kind.PRESSED_SOUND: Outcome.PRESSED,
    Kind.DISTORTED_SOUND: Outcome.ROUGH,
    Kind.WEAK_SOUND: Outcome.SOFT,
    Kind.SOUND_LEVEL_JUMP: Outcome.SOFT,
}


def choice(way: Way) -> Choice:
    options = tuple(Option(value=outcome.value, text=TEXTS[outcome]) for outcome in Outcome)
    return Choice(name="outcome", legend=way.legend, options=options)


def setting(mode: SoundMode, gain: int) -> Json:
    return {"sound_level": {"mode": mode.value, "gain": gain}}


def outcome(copy: Copy, beliefs: Collection[str] = ()) -> Outcome:
    """What comes of the second take, by the rules or as a believer expects it."""
    tape, bench = levelled(copy.tape, copy.session.bench, beliefs)
    kinds = {fault.kind for fault in faults(tape, bench) if fault.edit == SECOND}
    return next((what for kind, what in SHOWN_BY.items() if kind in kinds), Outcome.WELL)


def revealed(copy: Copy) -> Mapping[str, list[str]]:
    """By wrong outcome: the belief that expects it."""
    right = outcome(copy)
    expected = {belief: outcome(copy, (belief,)) for belief in LEVEL_BELIEFS}
    return {what.value: [belief] for belief, what in expected.items() if what is not right}
