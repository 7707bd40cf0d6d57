"""The three asks and their options, which are right, and what a wrong one reveals."""

from collections.abc import Iterator

from exercises.drills.asks import Choice, Option
from exercises.drills.beliefs import PROMISING
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.cause import cause_of
from exercises.drills.kinds.spot_the_bad_edit.mends import Mend, least
from exercises.drills.kinds.spot_the_bad_edit.state import FilmFault
from exercises.drills.setting.change import Mode

NOTHING, TAPE, LEAVE, LATER, TRACKING = "nothing", "tape", "leave", "later", "tracking"
ANOTHER = "another-tape"

FAULT_OPTIONS = (
    Option(value=FilmFault.NO_PULSES.value, text="There are no pulses on part of the film"),
    Option(
        value=FilmFault.ROLL.value,
        text="There are pulses all along, but somewhere in the film they jump",
    ),
    Option(
        value=FilmFault.UNSETTLED.value,
        text="The pulses run on, but a machine was not locked while copying",
    ),
    Option(
        value=FilmFault.BLANK.value,
        text="There are pulses, but part of the film has no picture or no sound",
    ),
    Option(
        value=FilmFault.OVER.value,
        text="All of it plays, but something that was to stay is recorded over",
    ),
    Option(
        value=FilmFault.WORN.value,
        text="All of it plays, but a tape is worn, and drops out for moments",
    ),
    Option(value=NOTHING, text="Nothing is wrong with the film"),
)

MEND_OPTIONS = (
    Option(value=LEAVE, text="Leave it as it is"),
    Option(value=TRACKING, text="Leave the tape, and adjust the tracking when it is played"),
    Option(value=LATER, text="Go on, and mend it with the rest when the film is finished"),
    Option(value=Mode.INSERT_PICTURE.value, text="Insert the picture of that part again"),
    Option(value=Mode.INSERT_SOUND.value, text="Insert the sound of that part again"),
    Option(value=Mode.INSERT_BOTH.value, text="Insert picture and sound of that part again"),
    Option(
        value=Mode.ASSEMBLE.value,
        text="Go back before it and assemble all that follows again",
    ),
    Option(value=ANOTHER, text="Lay all of the film again, on another tape"),
)
SELDOM = (TRACKING, LATER, ANOTHER)  # seldom right, so one of them is left out


def asks(edits: int, without: str = "") -> tuple[Choice, ...]:
    """`without` is a mend that isn't offered."""
    return (
        Choice(name="fault", legend="Which fault is it?", options=FAULT_OPTIONS),
        Choice(name="edit", legend="Which edit caused it?", options=edit_options(edits)),
        Choice(
            name="mend",
            legend="What now? Choose the least that puts it right.",
            options=tuple(each for each in MEND_OPTIONS if each.value != without),
        ),
    )


def edit_options(edits: int) -> tuple[Option, ...]:
    return (
        *(Option(value=str(number), text=f"Edit {number}") for number in range(1, edits + 1)),
        Option(value=TAPE, text="None of them: a tape is worn"),
        Option(value=NOTHING, text="None of them: nothing is wrong"),
    )


def right_answers(case: EditsCase) -> dict[str, str] | None:
    """The right option for each ask; None where a case has no single answer."""
    if case.fault is None:
        return {"fault": NOTHING, "edit": NOTHING, "mend": TRACKING if case.off else LEAVE}
    if case.off:
        return None
    mend = least(case)
    if case.is_worn:
        return {
            "fault": FilmFault.WORN.value,
            "edit": TAPE,
            "mend": mend.value if mend else ANOTHER,
        }
    if mend is None or cause_of(case) is None:
        return None
    (edit,) = case.blamed
    return {"fault": case.fault.value, "edit": str(edit + 1), "mend": mend.value}


def revealed(case: EditsCase, right: dict[str, str]) -> dict[str, dict[str, list[str]]]:
    """By ask and wrong option: the beliefs that it reveals."""
    blamed: dict[str, list[str]] = {TAPE: ["tape-fault"]} if right["edit"] != TAPE else {}
    if case.fault is None:
        return {"fault": {}, "edit": blamed, "mend": {}}
    unnoticed = _first(_hiding(case))
    return {
        "fault": {NOTHING: unnoticed} if unnoticed else {},
        "edit": blamed,
        "mend": {
            LATER: ["mend-later"],
            TRACKING: ["replay-repairs"],
            **({LEAVE: unnoticed} if unnoticed else {}),
            **_mends(case, right["mend"]),
        },
    }


def _hiding(case: EditsCase) -> Iterator[str]:
    """The beliefs by which nothing went wrong."""
    modes = {step.mode for step in case.steps}
    for belief in PROMISING:
        if modes & set(belief.modes) and case.states((belief.id,))[-1].plays_as_meant():
            yield belief.id


def _mends(case: EditsCase, right: str) -> dict[str, list[str]]:
    """For each mend that is not right: the belief by which it would be enough."""
    found = {}
    for mode in Mode:
        mend = Mend(case, mode)
        if mode.value == right or mend.works():
            continue
        concerned = (belief.id for belief in PROMISING if mode in belief.modes)
        beliefs = _first(belief for belief in concerned if mend.works((belief,)))
        if beliefs:
            found[mode.value] = beliefs
    if right not in (Mode.ASSEMBLE, ANOTHER) and Mend(case, Mode(right)).ends_inside_a_shot():
        found[Mode.ASSEMBLE.value] = ["insert-ends-ragged"]
    return found


def _first(beliefs: Iterator[str]) -> list[str]:
    return [belief for belief in (next(beliefs, None),) if belief]
