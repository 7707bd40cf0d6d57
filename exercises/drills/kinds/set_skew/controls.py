"""The controls of a bench that a picture may ask for, and what taking the wrong one reveals."""

from exercises.drills.asks import Choice, Option

TRACKING, SKEW = "tracking", "skew"

CONTROLS = Choice(
    name="control",
    legend="Which control is it?",
    options=(
        Option(value=TRACKING, text="The player’s tracking"),
        Option(value=SKEW, text="The player’s skew"),
    ),
)


def revealed(right: str) -> dict[str, list[str]]:
    swapped = SKEW if right == TRACKING else TRACKING
    return {swapped: ["tracking-skew-swapped"]}
