"""A control: where it can stand, and which places of it a question draws."""

from exercises.drills.asks import Dial
from exercises.drills.setting.draw import Draw

POSITIONS = 41
MIDDLE = POSITIONS // 2
EDGE = 5  # positions at either end that are never the best: there is something on both sides
AWAY = 7  # positions that a control is off at least, when it is shown


def place_in_words(position: int) -> str:
    """Where a control stands.

    >>> place_in_words(13), place_in_words(20), place_in_words(21)
    ('7 to the left', 'in the middle', '1 to the right')
    """
    off = position - MIDDLE
    return f"{abs(off)} to the {'left' if off < 0 else 'right'}" if off else "in the middle"


PLACES = tuple(place_in_words(position) for position in range(POSITIONS))


def best_of(draw: Draw) -> int:
    return draw.whole(EDGE, POSITIONS - 1 - EDGE)


def start_of(draw: Draw, best: int) -> int:
    """Where the control stands at first: clearly not where it should."""
    away = [each for each in range(POSITIONS) if AWAY <= abs(each - best) <= 3 * AWAY]
    return draw.pick(away)


def dial(name: str, legend: str, start: int) -> Dial:
    return Dial(name=name, legend=legend, positions=PLACES, start=start)
