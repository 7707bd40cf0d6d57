from enum import Enum
from fractions import Fraction


class Rate(Enum):
    """Pictures a second: by name, as an exact fraction, and how many labels a second has."""

    R29_97 = "29.97"
    R25 = "25"

    def __init__(self, label: str) -> None:
        self.label = label
        self.fraction = Fraction(30000, 1001) if label == "29.97" else Fraction(25)
        self.nominal = round(self.fraction)

    def day(self, *, drop: bool = False) -> int:
        """How many labels a day has; drop-frame code leaves out 108 an hour."""
        return 24 * (3600 * self.nominal - (108 if drop else 0))
