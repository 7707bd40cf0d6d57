"""Errors that are no misjudgement: the wrong way, half as far, twice as far."""

LEAST = 6  # positions; a shorter turn can't be told from another
NEAR = 1

FACTORS = (
    (-1.0, "You turned it as far as was needed, but the other way."),
    (2.0, "You turned it twice as far as was needed."),
    (0.5, "You turned it half as far as was needed."),
)


def remark(start: int, best: int, position: int) -> str:
    """What was done wrongly in turning from `start`, in a sentence; empty where nothing was.

    >>> remark(10, 20, 30)
    'You turned it twice as far as was needed.'
    """
    needed, turned = best - start, position - start
    if abs(needed) < LEAST:
        return ""
    for factor, sentence in FACTORS:
        if abs(turned - factor * needed) <= NEAR:
            return sentence
    return ""
