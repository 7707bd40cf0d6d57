"""Everything that can be on a tape, by name: the scenes of the film, and test patterns.

>>> frame("harbour", 12).shape
(480, 640, 3)
"""

from collections.abc import Callable

from exercises.signal.arrays import STANDARD, Picture, Size
from exercises.signal.patterns import PATTERNS
from exercises.signal.scenes import SCENES, TALKING

FOOTAGE: dict[str, Callable[[int, Size], Picture]] = {**SCENES, **PATTERNS}


def frame(name: str, n: int, size: Size = STANDARD, *, mouth: float | None = None) -> Picture:
    """Frame ``n``, from 0 on: rows × columns × red, green, blue.

    mouth  how far a face's mouth is open, 0 to 1 (`scenes.speech` makes it from loudness
           or from marks); None: it talks to itself. Without a face it does nothing.
    """
    if mouth is not None and name in TALKING:
        return TALKING[name](n, size, mouth)
    return FOOTAGE[name](n, size)
