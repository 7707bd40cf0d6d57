import random
from collections.abc import Sequence
from typing import TypeVar

T = TypeVar("T")


class Draw:
    """Drawing from a seed.

    Everything goes through `random.Random.random`, the one method that Python promises
    to keep: the same seed draws the same in every version and every process.
    """

    def __init__(self, seed: int) -> None:
        self._random = random.Random(seed).random

    def below(self, limit: int) -> int:
        return int(self._random() * limit)

    def whole(self, low: int, high: int) -> int:
        """A whole number from `low` to `high`, both included."""
        return low + self.below(high - low + 1)

    def chance(self, share: float) -> bool:
        return self._random() < share

    def pick(self, things: Sequence[T]) -> T:
        return things[self.below(len(things))]

    def shuffled(self, things: Sequence[T]) -> list[T]:
        left = list(things)
        return [left.pop(self.below(len(left))) for _ in things]
