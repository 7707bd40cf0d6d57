"""What tapes and people bear: the figures that lessons and questions share."""

from dataclasses import dataclass

FASTEST = 10  # °C an hour that the surroundings may change (SMPTE RP 103-1995, Table 1)
NEAREST = 15  # cm, to microphones, headphones, loudspeakers, needle meters (IASA-TC 05, 3.7)
SHIFT, SHORT = 400, 500  # ppm over a working day, over 15 minutes (NIOSH Pocket Guide 0359)
LOWER = 200  # ppm over a working day in some countries (from memory)


@dataclass(frozen=True, slots=True)
class Air:
    """What a tape bears: °C, and percent of relative humidity."""

    source: str
    warmth: tuple[int, int]
    damp: tuple[int, int]

    def fault(self, warmth: int, damp: int) -> str:
        """The one thing that is wrong with a room; empty where nothing is."""
        if warmth > self.warmth[1]:
            return "warm"
        if warmth < self.warmth[0]:
            return "cold"
        if damp > self.damp[1]:
            return "damp"
        return "dry" if damp < self.damp[0] else ""


OPERATING = Air("SMPTE RP 103-1995, Table 1", (17, 25), (30, 70))
STORING = Air("SMPTE RP 103-1995, Table 1: up to ten years", (15, 23), (40, 55))
# 17 °C and 30 %, and no more than 2 °C and 5 % away from them.
KEEPING = Air("SMPTE RP 103-1995, Table 1: beyond ten years", (15, 19), (25, 35))
