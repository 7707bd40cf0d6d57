"""The versions of the drill: what is on the tape, and what it is looked at on."""

from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.judging.rule import Rule
from exercises.drills.judging.rules import BARS_BY_NAME, BY_THE_WAVEFORM, WHITE_LEVEL
from exercises.drills.kinds.knobs.job import KnobJob
from exercises.drills.kinds.set_picture_level.white import level
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.footage import WITH_WHITE
from exercises.signal.displays import CONTRAST
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import numbers, white_bar
from exercises.tape.levels import WHITE, gained


@dataclass(frozen=True, slots=True, kw_only=True)
class Version:
    """`bars` is the pattern on the tape; none where a shot with a white is."""

    name: str
    displays: tuple[str, ...]
    story: Callable[[KnobJob], str]
    rule: Rule
    bars: str = ""

    @property
    def shots(self) -> tuple[str, ...]:
        return (self.bars,) if self.bars else WITH_WHITE

    @property
    def what(self) -> str:
        return "The white bar, the first from the left," if self.bars else "The brightest white"

    @property
    def contrast(self) -> float:
        """dB by which the monitor's own control stands off."""
        return next((CONTRAST[name] for name in self.displays if name in CONTRAST), 0.0)

    def shown(self, white: float, lines: Lines) -> float:
        """IRE that the waveform shows of it, where a whole white is at `white`.

        Gain works on levels over blanking, setup and all.
        """
        return white * white_bar(self.bars, lines) / WHITE if self.bars else white

    def looked(self, white: float) -> float:
        """IRE of a white that would look so on a monitor that is set right."""
        return gained(white, 10 * self.contrast)

    def card(self, lines: Lines) -> str:
        """What stands on the card of the tape."""
        return f"bars {numbers(self.bars, lines)}, line-up tone 0 VU" if self.bars else ""

    def why(self, lines: Lines) -> str:
        if self.bars:
            bar = level(white_bar(self.bars, lines), lines)
            return (
                f"The bars are {numbers(self.bars, lines)}, by the card: the first figure is the "
                f"white bar’s, and puts it at {bar}. There it comes nearest to that, and the "
                "whites of all that follows on the tape come right with it."
            )
        told = f"There the brightest white comes nearest to {level(WHITE, lines)}."
        if not self.contrast:
            return told
        dark = "too dark" if self.contrast < 0 else "too bright"
        return f"{told} The monitor’s own control is turned, so that it looks {dark}."


def of_shot(job: KnobJob) -> str:
    return job.draw.pick(
        (
            f"The shot from {job.clip.tape} has a pure white in it.",
            f"{job.clip.tape} was shot with the level on automatic; there is a white in it.",
            f"{job.clip.tape} comes from another camera than the shot before. It shows a white.",
        )
    )


def of_bars(job: KnobJob) -> str:
    return job.draw.pick(
        (
            f"At the head of {job.clip.tape} there are colour bars, and they are what is played.",
            f"{job.clip.tape} begins with colour bars, to be copied with all that follows.",
        )
    )


def watched(name: str, *displays: str, rule: Rule = WHITE_LEVEL) -> Version:
    return Version(name=name, displays=displays, story=of_shot, rule=rule)


def lined_up(name: str, bars: str) -> Version:
    displays = ("monitor", "waveform")
    return Version(name=name, displays=displays, story=of_bars, rule=BARS_BY_NAME, bars=bars)


WATCHED = watched("monitor-and-waveform", "monitor", "waveform")
DRAWN = (
    WATCHED,
    WATCHED,
    watched("dim-monitor", "dim-monitor", "waveform", rule=BY_THE_WAVEFORM),
    watched("bright-monitor", "bright-monitor", "waveform", rule=BY_THE_WAVEFORM),
    watched("waveform-alone", "waveform"),
    lined_up("bars-75", "bars"),
    lined_up("bars-100", "bars-100"),
)


def drawn(draw: Draw) -> Version:
    return draw.pick(DRAWN)
