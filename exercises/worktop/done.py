"""What came of an action, or why there was none."""

from dataclasses import dataclass

from exercises.worktop.worktop import Worktop


class BenchRefused(ValueError):
    """Nothing was done, and nothing is kept of it; the message is one full sentence."""


@dataclass(frozen=True, slots=True)
class Done:
    """The worktop afterwards, and what happened in a sentence or two.

    `sign` is what the machine showed where it would not: a machine's refusal is kept, as it tells
    of a habit; nothing else has changed then but the clock.
    """

    top: Worktop
    told: str
    sign: str = ""
