"""The two asks, their options, the rule of each fault, and what a wrong option reveals."""

from exercises.drills.asks import Choice, Option
from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.spot_by_eye.faults import PictureStretch, Seen, Where, where
from exercises.drills.kinds.spot_by_eye.form import Form, Showing

NOTHING = "nothing"

FAULT_OPTIONS = (
    Option(value=Seen.NOISE_BAND, text="Noise band: tracking was off in the copy"),
    Option(value=Seen.BENT, text="Bent verticals: skew was off in the copy"),
    Option(value=Seen.FLAT, text="Flat picture: its level is too low"),
    Option(value=Seen.CLIPPED, text="Clipped picture: its level is too high"),
    Option(value=Seen.JUMP, text="Level jump: two levels meet at the cut"),
    Option(value=Seen.FLASH, text="Flash frames: something is left at the cut"),
    Option(value=Seen.GENERATIONS, text="Too many generations: copied too often"),
    Option(value=Seen.ROLL, text="Roll: a machine was not locked"),
    Option(value=Seen.SNOW, text="Snow: no picture is recorded there"),
    Option(value=Seen.WORN, text="Worn tape: no edit has done it"),
    Option(value=NOTHING, text="Nothing is wrong"),
)
WHERE_OPTIONS = (
    Option(value=Where.BEFORE, text="Before the cut"),
    Option(value=Where.AFTER, text="After the cut"),
    Option(value=Where.BOTH, text="On both sides of it"),
    Option(value=Where.CUT, text="At the cut itself"),
    Option(value=NOTHING, text="Nowhere: nothing is wrong"),
)
FAULT = Choice(name="fault", legend="What is wrong with the picture?", options=FAULT_OPTIONS)
WHERE = Choice(name="where", legend="Where is it?", options=WHERE_OPTIONS)

RULES: dict[str, Rule] = {
    Seen.NOISE_BAND: rules.NOISE_BAND,
    Seen.BENT: rules.BENT_TOP,
    Seen.FLAT: rules.TOO_LOW,
    Seen.CLIPPED: rules.TOO_HIGH,
    Seen.JUMP: rules.ALIKE_AT_A_CUT,
    Seen.FLASH: rules.NO_FLASH,
    Seen.GENERATIONS: rules.FEW_COPIES,
    Seen.ROLL: rules.ROLLS,
    Seen.SNOW: rules.NO_PICTURE,
    Seen.WORN: rules.STREAKS_OF_ITS_OWN,
    NOTHING: rules.NO_FAULT,
}
SWAPPED = {Seen.NOISE_BAND: Seen.BENT, Seen.BENT: Seen.NOISE_BAND}


def asks(form: Form) -> tuple[Choice, ...]:
    return (FAULT,) if form is Form.STILL else (FAULT, WHERE)


def right_answers(found: list[PictureStretch], showing: Showing) -> dict[str, str] | None:
    """The right option for each ask; None where more than one thing is wrong."""
    if len({each.seen for each in found}) > 1:
        return None
    fault = found[0].seen.value if found else NOTHING
    if showing.form is Form.STILL:
        return {"fault": fault}
    return {"fault": fault, "where": where(found, showing.cut).value if found else NOTHING}


def revealed(fault: str) -> dict[str, dict[str, list[str]]]:
    """By ask and wrong option: the beliefs that it reveals."""
    if fault in (NOTHING, Seen.WORN):
        return {"fault": {}}
    beliefs = {Seen.WORN.value: ["tape-fault"]}
    if fault in SWAPPED:
        beliefs[SWAPPED[Seen(fault)].value] = ["tracking-skew-swapped"]
    return {"fault": beliefs}
