"""The scales that levels are read on: how far up each level stands, and its named places."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from exercises.signal.lines import Lines
from exercises.signal.meters.scale import END, MARKS
from exercises.tape import Rate
from exercises.tape.levels import gained

TOP = 120  # IRE, as waveform displays have it


@dataclass(frozen=True, kw_only=True)
class LevelScale:
    """`height` is how far up a level stands, 0 to 1; `places` are levels that have a name."""

    unit: str
    least: float
    most: float
    ticks: tuple[float, ...]
    places: Mapping[str, float]
    height: Callable[[float], float]

    def told(self, level: float) -> str:
        """A level with its unit, as people write it."""
        number = f"{level:+g}" if self.unit == "VU" and level else f"{level:g}"
        return f"{number.replace('-', '−')} {self.unit}"


def picture_scale(rate: Rate) -> LevelScale:
    """IRE over blanking: SMPTE 170M and ITU-R BT.1700, with set-up at 525 lines only."""
    lines = Lines.of(rate)
    least = round(lines.sync_tip)
    return LevelScale(
        unit="IRE",
        least=least,
        most=TOP,
        ticks=tuple(range(-40, TOP + 1, 20)),
        places={"sync tip": least, "blanking": 0, "black": lines.setup, "white": 100},
        height=lambda level: (level - least) / (TOP - least),
    )


def sound_scale() -> LevelScale:
    """A VU meter's (IEC 60268-17): its needle turns in proportion to the voltage."""
    return LevelScale(
        unit="VU",
        least=MARKS[0],
        most=MARKS[-1],
        ticks=MARKS,
        places={},
        height=lambda level: gained(1, 10 * level) / END,
    )


def scale_of(name: str, rate: Rate) -> LevelScale:
    return picture_scale(rate) if name == "IRE" else sound_scale()
