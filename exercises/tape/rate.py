from enum import Enum
from fractions import Fraction


class Rate(Enum):
    """Pictures a second, as an exact fraction; ``nominal`` is how many labels a second has."""

    R29_97 = "29.97"
    R25 = "25"

    @property
    def label(self) -> str:
        return self.value

    @property
    def nominal(self) -> int:
        return 30 if self is Rate.R29_97 else 25

    @property
    def fraction(self) -> Fraction:
        return Fraction(30000, 1001) if self is Rate.R29_97 else Fraction(25)

    def day(self, *, drop: bool = False) -> int:
        """How many labels a day has; drop-frame code leaves out 108 an hour."""
        return 24 * (3600 * self.nominal - (108 if drop else 0))
