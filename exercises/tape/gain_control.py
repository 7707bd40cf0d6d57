"""What a recorder does to the sound level by itself. Levels and gains in tenths of a dB."""

from dataclasses import dataclass
from math import exp


@dataclass(frozen=True, slots=True)
class Limiter:
    """A static curve with a hard knee, after Giannoulis, Massberg and Reiss, "Digital
    dynamic range compressor design", JAES 60(6), 2012. It takes peaks only: what stays
    below the threshold is left as it is. The figures are common practice.

    threshold  level above which it works
    ratio      how many dB above the threshold become one
    """

    threshold: int = 0
    ratio: int = 20

    def out(self, level: float) -> float:
        """The level that leaves it.

        >>> Limiter(threshold=-200, ratio=4).out(-120)
        -180.0
        """
        over = max(0.0, level - self.threshold)
        return level - over + over / self.ratio


LIMITER = Limiter()


@dataclass(frozen=True, slots=True)
class AutomaticGain:
    """A gain that follows the sound so as to bring it to ``target``: one pole, in dB.

    attack and release are time constants in ms: what it takes for 63 % of a change down
    (sound grew louder) and up (softer). The figures are common practice.

    most  how far the gain goes up or down
    """

    target: int = 0
    most: int = 200
    attack: int = 20
    release: int = 500

    def settled(self, level: float) -> float:
        """The gain it comes to rest at, when the level going in stays as it is."""
        return max(-self.most, min(self.most, self.target - level))

    def after(self, milliseconds: float, *, gain: float, level: float) -> float:
        """The gain after so long at one level, begun at ``gain``."""
        return self.toward(self.settled(level), milliseconds, gain=gain)

    def toward(self, aim: float, milliseconds: float, *, gain: float) -> float:
        """The gain after so long on the way to ``aim``.

        In a pause it recovers G(1 - e^(-t/release)) of the G it could go up.
        """
        constant = self.release if aim > gain else self.attack
        return aim + (gain - aim) * exp(-milliseconds / constant)


AUTOMATIC_GAIN = AutomaticGain()
