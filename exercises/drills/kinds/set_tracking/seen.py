"""What is seen of a tracking error, row by row, in words that name no fault."""

from functools import lru_cache

from exercises.signal.picture.envelope import HELD, envelope

ROWS = 120
HIDDEN = 6  # of them at either edge that a monitor hides
SNOW = 0.19  # of the signal: below, there is more snow than picture
THIRDS = ("upper", "middle", "lower")
# By the signal in the weakest row, how much fine noise there is where there are no streaks.
GRAIN = (
    (0.72, "No streaks, and hardly any fine noise."),
    (0.62, "No streaks; a little fine noise."),
    (0.50, "No streaks; some fine noise."),
    (0.0, "No streaks, but much fine noise."),
)


@lru_cache(maxsize=256)
def seen(tracking: int, *, hidden: int = HIDDEN) -> str:
    """What a display shows at a tracking error in percent of a track.

    >>> seen(0)
    'No streaks, and hardly any fine noise.'
    >>> seen(-50)
    'White streaks on 22 % of the rows, most of them in the upper third. The rest is clear.'
    """
    signal = envelope(ROWS, tracking).tolist()[hidden : ROWS - hidden]
    streaks = [row for row, each in enumerate(signal) if SNOW <= each < HELD]
    snow = [row for row, each in enumerate(signal) if each < SNOW]
    if not snow and not streaks:
        return next(words for least, words in GRAIN if min(signal) >= least)
    parts = [
        f"{name} on {share(rows, len(signal))} of the rows, {place(rows, len(signal))}"
        for name, rows in (("snow", snow), ("white streaks", streaks))
        if rows
    ]
    told = ", and ".join(parts)
    clear = len(snow) + len(streaks) < len(signal)
    return f"{told[:1].upper()}{told[1:]}.{' The rest is clear.' if clear else ''}"


def share(rows: list[int], count: int) -> str:
    return f"{max(1, round(100 * len(rows) / count))} %"


def place(rows: list[int], count: int) -> str:
    thirds = [row * 3 // count for row in rows]
    third = max(range(3), key=thirds.count)
    return f"most of them in the {THIRDS[third]} third"
