"""A VU meter beside a peak meter: which of them to go by, and which way to turn."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from exercises.drills.judging.rules import TWO_METERS
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.scene import Scene
from exercises.signal.meters import both, peak
from exercises.signal.meters.scale import in_words
from exercises.signal.sound.samples import RATE, Samples
from exercises.signal.sound.struck import winch
from exercises.signal.sound.tones import line_up_tone
from exercises.signal.speech.reel import reel

DOWN = "Turn it down, for it is too loud"
STAY = "Leave it, for it is as it should be"
UP = "Turn it up, for it is too soft"
REPLIES = {
    DOWN: "That is for speech or tone over 0 VU, and for knocks over the peak meter’s maximum.",
    STAY: "That is for speech or tone at 0 VU, and for knocks close under the peak meter’s "
    "maximum, whatever the VU meter says of them.",
    UP: "That is for speech or tone well under 0 VU, and for knocks far under the peak meter’s "
    "maximum.",
}
BAND = 10  # 0.1 dB (operating tolerance of levels, from memory)
ROOM = 60  # 0.1 dB under its maximum that a knock may stay (this course’s own choice)


@dataclass(frozen=True, slots=True)
class MeasuredSound:
    """What is measured, at the level that it has by itself; `knocks` are for the peak meter."""

    what: str
    samples: Callable[[], Samples]
    knocks: bool = False

    def right(self, gain: int) -> str:
        """Which way to turn it, so many tenths of a dB louder."""
        needle, most = readings(self)
        high, low = most + gain - peak.HEADROOM, most + gain - peak.HEADROOM + ROOM
        if not self.knocks:
            high, low = needle + gain - BAND, needle + gain + BAND
        return DOWN if high > 0 else UP if low < 0 else STAY


def _line(name: str) -> Callable[[], Samples]:
    return lambda: reel(name, begin=0).read(0, 6 * RATE)


SOUNDS = (
    MeasuredSound("the keeper, talking", _line("keeper-1")),
    MeasuredSound("the keeper, at the end of an answer", _line("keeper-4")),
    MeasuredSound("line-up tone", lambda: line_up_tone().read(0, RATE)),
    MeasuredSound("the winch, click by click", winch, knocks=True),
    MeasuredSound("the winch in the crank room", winch, knocks=True),
)
# Tenths of a dB by which each is played louder, or softer, by what is right then.
SPOKEN = {DOWN: range(40, 90, 5), STAY: (-5, 0, 5), UP: range(-130, -50, 5)}
KNOCKED = {DOWN: range(70, 120, 5), STAY: range(-10, 45, 5), UP: range(-170, -70, 5)}


@lru_cache
def readings(sound: MeasuredSound) -> tuple[float, float]:
    """The highest that a VU meter and a peak meter read, in tenths of a dB over line-up."""
    return both.highest(sound.samples())


def read(scene: Scene) -> BenchReading:
    sound, right = scene.draw.pick(SOUNDS), scene.draw.pick((DOWN, STAY, UP))
    gain = scene.draw.pick(tuple((KNOCKED if sound.knocks else SPOKEN)[right]))
    needle, most = readings(sound)
    at = scene.code(scene.seconds(60, 900))
    return BenchReading(
        name="two-meters",
        story=f"The bench has a VU meter and a peak meter. What is to be laid at {at} is played, "
        "and both are watched to the end.",
        facts=(
            ("Heard", sound.what),
            ("VU meter, at its highest", in_words(needle + gain)),
            ("Peak meter, at its highest", told(most + gain - peak.HEADROOM)),
        ),
        legend="What do you do with its level?",
        replies=REPLIES,
        right=sound.right(gain),
        rule=TWO_METERS,
    )


def told(over: float) -> str:
    """A peak meter’s reading against its permitted maximum.

    >>> told(-34), told(52)
    ('3 dB under its permitted maximum', '5 dB over its permitted maximum')
    """
    whole = round(abs(over) / 10)
    where = "over" if over > 0 else "under"
    return f"{whole} dB {where} its permitted maximum" if whole else "at its permitted maximum"
