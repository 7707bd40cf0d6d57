"""A white on the waveform display, in IRE at 525 lines, in mV at 625; and on a monitor."""

from exercises.signal.lines import Lines
from exercises.tape.limits import LIMITS


def level(ire: float, lines: Lines) -> str:
    """A level as the display's scale has it (SMPTE 170M: 100 IRE; ITU-R BT.1700: 700 mV).

    >>> level(93.2, Lines.L525), level(93.2, Lines.L625)
    ('93 IRE', '652 mV')
    """
    if lines is Lines.L525:
        return f"{ire:.0f} IRE"
    return f"{ire * lines.millivolts:.0f} mV"


def seen(white: float, lines: Lines, what: str) -> str:
    """What the waveform shows of something that a white of `white` IRE belongs to."""
    most = LIMITS.clipped_picture
    if white > most:
        return f"{what} is cut off flat at {level(most, lines)}."
    return f"{what} stands at {level(white, lines)}."


def looks(white: float) -> str:
    """How a white looks on a monitor.

    >>> looks(70)
    'On the monitor, white looks grey.'
    """
    if white > LIMITS.clipped_picture:
        return "On the monitor, white glares and has no shape."
    return f"On the monitor, white looks {'grey' if white < LIMITS.flat_picture else 'white'}."


def reached(white: float, lines: Lines, what: str = "white") -> str:
    """Where a white comes to stand.

    >>> reached(129, Lines.L525)
    'white cut off at 110 IRE'
    """
    most = LIMITS.clipped_picture
    return (
        f"{what} cut off at {level(most, lines)}"
        if white > most
        else f"{what} at {level(white, lines)}"
    )
