"""The versions of the drill: what is on the tape, and what it is looked at on."""

from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.draw import Draw
from exercises.drills.knobs.footage import WITH_WHITE
from exercises.drills.knobs.job import Job
from exercises.drills.set_picture_level.white import level
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import BARS
from exercises.tape.levels import WHITE


@dataclass(frozen=True, slots=True, kw_only=True)
class Version:
    """`shown` is the level of `what` the waveform shows, where white is at so many IRE."""

    name: str
    shots: tuple[str, ...]
    displays: tuple[str, ...]
    what: str
    shown: Callable[[float, Lines], float]
    story: Callable[[Job], str]
    why: Callable[[Lines], str]


def of_white(white: float, lines: Lines) -> float:
    return white


def of_bar(white: float, lines: Lines) -> float:
    """Gain works on levels over blanking, setup and all."""
    return white * BARS[0].ire(lines) / WHITE


def of_shot(job: Job) -> str:
    return job.draw.pick(
        (
            f"The shot from {job.clip.tape} has a pure white in it.",
            f"{job.clip.tape} was shot with the level on automatic; there is a white in it.",
            f"{job.clip.tape} comes from another camera than the shot before. It shows a white.",
        )
    )


def of_bars(job: Job) -> str:
    return job.draw.pick(
        (
            f"At the head of {job.clip.tape} there are 75 % bars, and they are what is played.",
            f"{job.clip.tape} begins with 75 % bars. They are to be copied with all that follows.",
        )
    )


def where_white_is(lines: Lines) -> str:
    return f"There the brightest white comes nearest to {level(WHITE, lines)}."


def where_bar_is(lines: Lines) -> str:
    bar = level(BARS[0].ire(lines), lines)
    return (
        f"There the white bar comes nearest to {bar}: it is three quarters of a white, "
        f"and a whole one would stand at {level(WHITE, lines)}."
    )


WATCHED = Version(
    name="monitor-and-waveform",
    shots=WITH_WHITE,
    displays=("monitor", "waveform"),
    what="The brightest white",
    shown=of_white,
    story=of_shot,
    why=where_white_is,
)
MEASURED = Version(
    name="waveform-alone",
    shots=WITH_WHITE,
    displays=("waveform",),
    what="The brightest white",
    shown=of_white,
    story=of_shot,
    why=where_white_is,
)
LINED_UP = Version(
    name="bars",
    shots=("bars",),
    displays=("monitor", "waveform"),
    what="The white bar, the first from the left,",
    shown=of_bar,
    story=of_bars,
    why=where_bar_is,
)
DRAWN = (WATCHED, WATCHED, MEASURED, LINED_UP)


def drawn(draw: Draw) -> Version:
    return draw.pick(DRAWN)
