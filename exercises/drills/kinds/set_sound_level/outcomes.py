"""Ways of holding a second take’s level, and what the tape model says comes of each."""

from collections.abc import Collection, Mapping
from enum import StrEnum

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.beliefs import LEVEL_BELIEFS, levelled
from exercises.drills.kinds.knobs.copy import Copy
from exercises.tape import FaultKind, SoundMode, faults

SECOND = 1  # the edit that is asked about


class SettingWay(StrEnum):
    SET = "set"
    LEFT = "left"
    LIMITED = "limited"
    AUTOMATIC = "automatic"

    @property
    def mode(self) -> SoundMode:
        if self is SettingWay.AUTOMATIC:
            return SoundMode.AUTOMATIC
        return SoundMode.BY_HAND if self is SettingWay.LEFT else SoundMode.LIMITER

    @property
    def legend(self) -> str:
        return LEGENDS[self]


LEGENDS = {
    SettingWay.SET: "Once the control stands where it belongs, with the limiter on: "
    "what comes of the second take?",
    SettingWay.LEFT: "Before you turn it: left where it is, what would come of the second take?",
    SettingWay.LIMITED: "Before you turn it: left where it is, with the limiter on, "
    "what would come of the second take?",
    SettingWay.AUTOMATIC: "Before you turn it: left where it is, with automatic gain on, "
    "what would come of the second take?",
}


class SoundOutcome(StrEnum):
    WELL = "well"
    SWELLS = "swells"
    SOFT = "soft"
    ROUGH = "rough"
    PRESSED = "pressed"


TEXTS = {
    SoundOutcome.WELL: "Its words reach 0 VU, and the room stays low in the pauses",
    SoundOutcome.SWELLS: "Its words reach 0 VU, and the room comes up in the pauses",
    SoundOutcome.SOFT: "Its words stay softer than those of the first take",
    SoundOutcome.ROUGH: "Its words are louder than the tape can hold, and rough",
    SoundOutcome.PRESSED: "All its words are held down, and sound flat and pressed",
}
# The worst first: what is distorted jumps as well.
SHOWN_BY = {
    FaultKind.NOISY_PAUSES: SoundOutcome.SWELLS,
    FaultKind.PRESSED_SOUND: SoundOutcome.PRESSED,
    FaultKind.DISTORTED_SOUND: SoundOutcome.ROUGH,
    FaultKind.WEAK_SOUND: SoundOutcome.SOFT,
    FaultKind.SOUND_LEVEL_JUMP: SoundOutcome.SOFT,
}


def choice(way: SettingWay) -> Choice:
    options = tuple(Option(value=outcome.value, text=TEXTS[outcome]) for outcome in SoundOutcome)
    return Choice(name="outcome", legend=way.legend, options=options)


def setting(mode: SoundMode, gain: int) -> Json:
    return {"sound_level": {"mode": mode.value, "gain": gain}}


def outcome(copy: Copy, beliefs: Collection[str] = ()) -> SoundOutcome:
    """What comes of the second take, by the rules or as a believer expects it."""
    tape, bench = levelled(copy.tape, copy.session.bench, beliefs)
    kinds = {fault.kind for fault in faults(tape, bench) if fault.edit == SECOND}
    return next((what for kind, what in SHOWN_BY.items() if kind in kinds), SoundOutcome.WELL)


def revealed(copy: Copy) -> Mapping[str, list[str]]:
    """By wrong outcome: the belief that expects it."""
    right = outcome(copy)
    expected = {belief: outcome(copy, (belief,)) for belief in LEVEL_BELIEFS}
    return {what.value: [belief] for belief, what in expected.items() if what is not right}
