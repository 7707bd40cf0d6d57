"""Pictures in exact words: what is seen, never what it is called or comes from.

Every picture is told alike, fault or none, so that the order of sentences says nothing.
"""

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from math import exp, inf

from exercises.drills.media.medium import Picture
from exercises.drills.media.rendering import look
from exercises.drills.setting.footage import FOOTAGE
from exercises.drills.setting.phrases import begun
from exercises.signal.displays.monitor import OVERSCAN
from exercises.signal.picture import Look
from exercises.signal.picture.envelope import HELD, heads_signal
from exercises.signal.picture.level import CEILING, factor
from exercises.signal.picture.rendering import unlocked
from exercises.signal.picture.timebase import low as how_low
from exercises.signal.picture.timebase import rolled, shear, since_switch

ROWS, WIDTH = 480, 640  # of the picture that the figures speak of
HIDDEN = round(OVERSCAN * ROWS)  # rows at the top that a monitor doesn't show
SOFT = 5  # copies from which on the loss of detail is plain (common practice)


def picture_in_words(picture: Picture, reach: float = inf) -> str:
    """One picture, in sentences.

    `reach` is how many pixels aside are still told in figures. It is the width of the picture
    where nothing has to be told as a question once did.

    >>> picture_in_words(Picture(scene="black", frame=0, look={"blank": True}))
    'No picture: moving grey grain from edge to edge.'
    """
    under = look(dict(picture.look))
    if under.blank:
        return "No picture: moving grey grain from edge to edge."
    name = FOOTAGE[picture.scene].picture if picture.scene in FOOTAGE else "black"
    hidden = HIDDEN if picture.display == "monitor" else 0
    return f"{begun(name)}. {' '.join(sentences(under, hidden, reach))}"


def sentences(under: Look, hidden: int, reach: float = inf) -> Iterator[str]:
    yield brightness(under)
    yield grain(under)
    yield streaks(under)
    yield uprights(under, hidden, reach)
    yield standing(under)


def motion(pictures: Sequence[Picture], reach: float = inf) -> tuple[str, ...]:
    """Pictures one after another; those that are told alike in one."""
    found, number = [], 1
    for words, group in groupby(picture_in_words(each, reach) for each in pictures):
        last = number + len(list(group)) - 1
        where = f"Picture {number}" if last == number else f"Pictures {number} to {last}"
        found.append(f"{where}: {words}")
        number = last + 1
    return tuple(found)


def brightness(under: Look) -> str:
    white = round(min(under.source, CEILING) * factor(under.gain))
    if under.source > CEILING or white > CEILING:
        return f"The brightest parts stand at {CEILING:.0f} IRE and are all alike, without detail."
    return f"The brightest parts stand at {white} IRE, with detail in them."


def grain(under: Look) -> str:
    detail = "soft, its colours a little to the right" if under.copies >= SOFT else "sharp"
    return f"The grain lies {under.snr:.0f} dB under the picture; fine detail is {detail}."


def streaks(under: Look) -> str:
    """Where the heads' signal is lost."""
    signal = heads_signal(under, 100).tolist()
    slid = unlocked(under, 100)
    if slid is not None:
        signal = list(map(min, signal, slid.tolist()))
    order = rolled(under, 100) if under.adrift is not None else None
    if order is not None:  # a bar without any signal comes with it, which is no streak
        signal = [signal[row] if row < 100 else 1.0 for row in order.tolist()]
    bands = [f"{first} % to {last} %" for first, last in _bands(each < HELD for each in signal)]
    if not bands and under.dropouts:
        return f"Single white streaks lie here and there, about {under.dropouts:.0f} of them."
    if not bands:
        return "There are no white streaks."
    return f"White streaks lie across it from {' and '.join(bands)} of the way down."


def uprights(under: Look, hidden: int, reach: float = inf) -> str:
    """Where upright lines stand at the top of what is seen, against its middle."""
    since = since_switch(under.lines, ROWS, ROWS)
    top, middle = float(since[hidden]), float(since[ROWS // 2])
    late = under.skew * (exp(-top / under.hold) - exp(-middle / under.hold) if under.hold else 0)
    if under.adrift is not None:
        return "Upright lines lean, and tear where streaks lie."
    if under.settling is not None:
        lean = shear(under.settling, since)
        late += float(lean[hidden] - lean[ROWS // 2])
    pixels = round(under.lines.pixels(late, WIDTH))
    if abs(pixels) < 2:
        return "Upright lines are straight."
    if abs(pixels) >= reach:
        return "Upright lines lean so far that their tops are out of the picture."
    side = "right" if pixels > 0 else "left"
    return f"The top of upright lines lies {abs(pixels)} pixels of {WIDTH} to the {side}."


def standing(under: Look) -> str:
    """To a tenth of its height, so that a moving picture isn't told frame by frame."""
    low = round(10 * (how_low(under) % 1)) % 10
    if not low:
        return "The picture stands at its right height."
    return f"The picture stands {10 * low} % of its height too low, a dark bar across it."


def _bands(marked: Iterable[bool]) -> Iterator[tuple[int, int]]:
    """The stretches of what is true, by number."""
    at = 0
    for is_marked, group in groupby(marked):
        length = len(list(group))
        if is_marked:
            yield at, at + length
        at += length
