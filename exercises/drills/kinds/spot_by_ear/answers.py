"""The ask, its options, the rule of each fault, and what a wrong option reveals."""

from exercises.drills.asks import Choice, Option
from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.spot_by_ear.faults import Heard, SoundStretch

NOTHING, TAPE = "nothing", "worn-tape"

FAULT = Choice(
    name="fault",
    legend="What is wrong with the sound?",
    options=(
        Option(value=Heard.WORD, text="Clipped word: the cut falls into it"),
        Option(value=Heard.BREATH, text="Stray breath: it is left at the cut"),
        Option(value=Heard.JUMP, text="Level jump: two levels meet at the cut"),
        Option(value=Heard.WEAK, text="Weak sound: its level is too low"),
        Option(value=Heard.DISTORTED, text="Distorted sound: its level is too high"),
        Option(value=Heard.PAUSES, text="Noisy pauses: automatic gain was on"),
        Option(value=Heard.WAVERS, text="Wavering pitch: a machine was not locked"),
        Option(value=Heard.HOLE, text="A hole: the tape is blank, or no sound was copied"),
        Option(value=TAPE, text="Worn tape: no edit has done it"),
        Option(value=NOTHING, text="Nothing is wrong"),
    ),
)
RULES: dict[str, Rule] = {
    Heard.WORD: rules.WHOLE_WORDS,
    Heard.BREATH: rules.NO_BREATH,
    Heard.JUMP: rules.SOUND_ALIKE,
    Heard.WEAK: rules.OVER_THE_HISS,
    Heard.DISTORTED: rules.UNDER_THE_CEILING,
    Heard.PAUSES: rules.QUIET_PAUSES,
    Heard.WAVERS: rules.STEADY_PITCH,
    Heard.HOLE: rules.NO_HOLE,
    TAPE: rules.TAPE_ITSELF,
    NOTHING: rules.WELL_HEARD,
}

# By the fault that is there: what somebody believes who hears nothing wrong.
UNHEARD = {
    Heard.WORD: "words-can-spare",
    Heard.BREATH: "words-can-spare",
    Heard.DISTORTED: "hotter-is-better",
    Heard.PAUSES: "agc-evens-out",
}


def right_answer(found: list[SoundStretch], *, worn: bool) -> str | None:
    """The right option; None where more than one thing is wrong.

    `worn`: the sound dips where no edit is.
    """
    kinds = {*(each.heard.value for each in found), *([TAPE] if worn else [])}
    if len(kinds) > 1:
        return None
    return next(iter(kinds), NOTHING)


def revealed(fault: str) -> dict[str, dict[str, list[str]]]:
    """By wrong option: the beliefs that it reveals."""
    if fault in (NOTHING, TAPE):
        return {"fault": {}}
    beliefs = {TAPE: ["tape-fault"]}
    if fault in UNHEARD:
        beliefs[NOTHING] = [UNHEARD[Heard(fault)]]
    return {"fault": beliefs}
