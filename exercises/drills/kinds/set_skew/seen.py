"""What is seen of a time step where the heads change over, in words that name no fault."""

from exercises.drills.media.described import uprights
from exercises.drills.setting.phrases import begun
from exercises.signal.lines import Lines
from exercises.signal.picture import Look


def seen(skew: int, lines: Lines, display: str) -> str:
    """What a display shows of a step in tenths of a µs; positive is late.

    >>> seen(-30, Lines.L625, "cross-pulse")
    'Below field blanking, the bar of line sync begins 4.7 % of a line to the left.'
    """
    if display == "cross-pulse":
        return sync_bar(skew, lines)
    return uprights(Look(lines=lines, skew=skew / 10), hidden=0)


def sync_bar(skew: int, lines: Lines) -> str:
    if not skew:
        return "The bar of line sync runs straight through field blanking."
    share = f"{abs(skew) / 10 / lines.line:.1%}".replace("%", " %")
    side = "right" if skew > 0 else "left"
    return f"Below field blanking, the bar of line sync begins {share} of a line to the {side}."


def step(skew: int) -> str:
    """A time step in the model's units.

    >>> step(-15), step(0)
    ('a step of 1.5 µs, early', 'no step')
    """
    side = "late" if skew > 0 else "early"
    return f"a step of {abs(skew) / 10:.1f} µs, {side}" if skew else "no step"


def named(display: str) -> str:
    return begun(DISPLAYS[display])


DISPLAYS = {
    "underscan": "the underscan display",
    "cross-pulse": "the cross-pulse display",
}
