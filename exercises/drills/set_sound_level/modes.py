"""By hand, limiter or automatic gain: which of them the takes ask for, by the tape model."""

from collections.abc import Mapping

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.knobs.copy import Copy
from exercises.tape import SoundMode

MODES = Choice(
    name="mode",
    legend="How is the level to be held?",
    options=(
        Option(value=SoundMode.BY_HAND.value, text="By hand alone"),
        Option(value=SoundMode.LIMITER.value, text="By hand, with the limiter"),
        Option(value=SoundMode.AUTOMATIC.value, text="By automatic gain"),
    ),
)


def setting(mode: str, gain: int) -> Json:
    return {"sound_level": {"mode": mode, "gain": gain}}


def least(document: Json, gain: int) -> str | None:
    """The first that leaves no fault: the less is done by machine, the better."""
    for mode in SoundMode:
        if not Copy(document, setting(mode.value, gain)).faults():
            return mode.value
    return None


def revealed(right: str) -> Mapping[str, list[str]]:
    """What it says of somebody who would have another."""
    wrong: dict[str, list[str]] = {SoundMode.AUTOMATIC.value: ["agc-evens-out"]}
    if right == SoundMode.AUTOMATIC:
        return {SoundMode.LIMITER.value: ["limiter-is-agc"]}
    return wrong


WHY = {
    SoundMode.BY_HAND.value: "Both takes then reach 0 VU within what goes unnoticed, so that "
    "nothing needs to be held by a machine.",
    SoundMode.LIMITER.value: "The limiter then leaves the first take alone and holds the second, "
    "which would be distorted.",
    SoundMode.AUTOMATIC.value: "The second take would be too weak, and a limiter lifts nothing. "
    "The rooms are so quiet that automatic gain does no harm in the pauses.",
}
