"""The two line systems, as far as a picture shows them."""

from enum import Enum
from typing import Self

from exercises.signal.arrays import Size
from exercises.tape import Rate


class Lines(Enum):
    """Times and levels of 525/59.94 and 625/50.

    SMPTE 170M and ITU-R BT.1700. Times in µs, fields in ms; levels in IRE over blanking,
    white at 100: one is 7.143 mV at 525 lines and 7 mV at 625. Black is lifted over blanking
    by ``setup`` at 525 lines only. ``switch`` is how many lines before field sync the heads
    change over: 6.5 and 7, of which ``below`` are after the active picture (common practice).
    """

    L525 = 525
    L625 = 625

    def __init__(self, total: int) -> None:
        wide = total == 625
        self.total = total
        self.rows = 576 if wide else 480
        self.line = 64.0 if wide else 63.5556
        self.active = 52.0 if wide else 52.66
        self.front_porch = 1.55 if wide else 1.5
        self.sync = 4.7
        self.burst_start = 5.6 if wide else 5.3
        self.burst = 2.25 if wide else 2.51
        self.field = 20.0 if wide else 1001 / 60
        self.setup = 0.0 if wide else 7.5
        self.sync_tip = -300 / 7 if wide else -40.0
        self.burst_peak = 150 / 7 if wide else 20.0
        self.millivolts = 7.0 if wide else 1000 / 140
        self.pulses = 5 if wide else 6  # equalising, and broad, half a line each
        self.switch = 7.0 if wide else 6.5
        self.below = 2.5 if wide else 3.0

    @classmethod
    def of(cls, rate: Rate) -> Self:
        return cls(625 if rate is Rate.R25 else 525)

    @property
    def size(self) -> Size:
        """The size at which a row is a line and pixels are square.

        >>> Lines.L525.size, Lines.L625.size
        ((640, 480), (768, 576))
        """
        return self.rows * 4 // 3, self.rows

    def pixels(self, microseconds: float, width: int) -> float:
        """How many pixels of an active line ``width`` pixels long so much time is.

        >>> round(Lines.L525.pixels(1, 640), 2)
        12.15
        """
        return microseconds * width / self.active

    def level(self, shade: float) -> float:
        """IRE of a shade, black 0 to white 1."""
        return self.setup + (100 - self.setup) * shade

    def shade(self, ire: float) -> float:
        """The inverse of ``level``."""
        return (ire - self.setup) / (100 - self.setup)

    def switch_row(self, height: int) -> int:
        """The first row, of so many, that the other head reads: some lines above the bottom.

        >>> Lines.L525.switch_row(480), Lines.L625.switch_row(576)
        (473, 567)
        """
        above = 2 * (self.switch - self.below)
        return height - round(above * height / self.rows)
