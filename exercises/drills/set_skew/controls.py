"""The controls of a bench that a picture may ask for, and what taking the wrong one reveals."""

from exercises.drills.asks import Choice, Option

TRACKING, SKEW, RECORDER, LEVEL = "tracking", "skew", "recorder", "level"

CONTROLS = Choice(
    name="control",
    legend="Which control is it?",
    options=(
        Option(value=TRACKING, text="The player’s tracking"),
        Option(value=SKEW, text="The player’s skew"),
        Option(value=RECORDER, text="The recorder’s tracking"),
        Option(value=LEVEL, text="The picture level"),
    ),
)


def revealed(right: str) -> dict[str, list[str]]:
    swapped = SKEW if right == TRACKING else TRACKING
    return {swapped: ["tracking-skew-swapped"], RECORDER: ["tune-the-recorder"]}
