"""Meters, and how far from a mark on them is still right."""

from dataclasses import dataclass, replace

from exercises.signal.lines import Lines
from exercises.tape.levels import WHITE
from exercises.tape.limits import LIMITS


@dataclass(frozen=True, slots=True)
class PaperMeter:
    """A meter: its unit, what belongs at its mark, and where the scale ends.

    `band` is how far off is still right: common practice, 1 dB at line-up, 2 IRE at white,
    1 IRE at black.
    """

    name: str
    unit: str
    mark: float
    end: float
    band: float
    decimals: int = 0

    @property
    def spoken(self) -> str:
        """The unit in which a reading is told."""
        return "VU" if self.unit == "dB" else self.unit

    def told(self, reading: float) -> str:
        """A reading, as the meter is read.

        >>> VU.told(-7), picture(Lines.L625).told(637)
        ('−7 VU', '637 mV')
        """
        sign = "+" if self.unit == "dB" and reading > 0 else ""
        return f"{sign}{reading:g} {self.spoken}".replace("-", "−")


VU = PaperMeter("VU meter, from −20 to +3", "dB", 0, 3, 1)
# Ambience lies under speech: as soft as passes at all (common practice).
AMBIENCE = replace(VU, mark=LIMITS.weak_sound / 10, band=2)


def picture(lines: Lines, mark: float = WHITE) -> PaperMeter:
    """A waveform display, on which something belongs at so many IRE."""
    if lines is Lines.L525:
        return PaperMeter("waveform display, up to 120 IRE", "IRE", round(mark), 120, 2)
    factor = round(lines.millivolts)
    return PaperMeter("waveform display, up to 850 mV", "mV", round(factor * mark), 850, 2 * factor)


def black(lines: Lines) -> PaperMeter:
    """The same, read at black."""
    whole = picture(lines)
    if lines is Lines.L525:
        return replace(whole, mark=lines.setup, band=1, decimals=1)
    return replace(whole, mark=0, band=whole.band / 2)
