"""What a picture of a lesson shows, in words that hold for that very picture."""

from collections.abc import Iterator
from functools import lru_cache
from math import isinf

import numpy as np

from exercises.drills.kinds.set_skew.seen import sync_bar
from exercises.drills.media.described import HIDDEN, grain, standing, streaks, uprights
from exercises.drills.media.medium import Picture
from exercises.drills.media.rendering import look
from exercises.drills.setting.footage import EVERYTHING
from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.picture import Look
from exercises.signal.picture.level import CEILING, FLOOR, factor

SMALL = (160, 120)  # enough to find the brightest parts
BRIGHTEST = 99.5  # percent of the picture that is darker than its brightest parts
LUMA = (0.299, 0.587, 0.114)  # ITU-R BT.601

SCENES = {name: shot.picture for name, shot in EVERYTHING.items()} | {
    "bars": "colour bars with a white bar of 75 %",
    "bars-100": "colour bars with a white bar of 100 %",
    "ripples": "water against the piles of the quay",
    "title": "the title card of The Bridge Keeper",
    "black": "black",
    "leader": "the countdown of a leader",
    "grid": "a grid of white lines",
}
DISPLAYS = {
    "monitor": "On a monitor",
    "underscan": "On an underscan display, with all edges in view",
    "cross-pulse": "On a cross-pulse display, with line and field blanking across the middle",
    "waveform": "On a waveform monitor",
}


def told(picture: Picture) -> list[str]:
    """One picture, in sentences; the first says what it is of, and what it is looked at on."""
    under = look(dict(picture.look))
    display = DISPLAYS[picture.display]
    if under.blank:
        return [f"{display}: no picture, only moving grey grain from edge to edge."]
    return [f"{display}: {SCENES[picture.scene]}.", *_sentences(picture, under)]


def _sentences(picture: Picture, under: Look) -> Iterator[str]:
    yield brightness(picture, under)
    if picture.display == "waveform":
        yield f"Black stands at {_black(under):.1f} IRE.".replace(".0 ", " ")
        return
    yield "There is no grain." if isinf(under.snr) else grain(under)
    yield streaks(under)
    if picture.display == "cross-pulse":
        yield sync_bar(round(10 * under.skew), under.lines)
        return
    yield uprights(under, HIDDEN if picture.display == "monitor" else 0)
    yield standing(under)


def brightness(picture: Picture, under: Look) -> str:
    shade = brightest(picture.scene, picture.frame)
    if not shade:
        return "All of it is black."
    reached = under.lines.level(shade) * under.source / 100
    level = min(reached, CEILING) * factor(under.gain) + under.pedestal
    if max(reached, level) > CEILING:
        most = _in_words(CEILING, picture, under)
        return f"The brightest parts stand at {most} and are all alike, without detail."
    return f"The brightest parts stand at about {_in_words(level, picture, under)}, with detail."


@lru_cache(maxsize=256)
def brightest(scene: str, number: int) -> float:
    """How bright the brightest parts of a frame are, 0 to 1."""
    luma = frame(scene, number, SMALL) @ np.array(LUMA)
    return float(np.percentile(luma, BRIGHTEST)) / 255


def _black(under: Look) -> float:
    """IRE that black stands at as it comes off the tape."""
    setup = under.lines.setup * under.source / 100
    return max(FLOOR, setup * factor(under.gain) + under.pedestal)


def _in_words(level: float, picture: Picture, under: Look) -> str:
    """A level as the display has it: a waveform monitor for 625 lines is in mV."""
    if picture.display == "waveform" and under.lines is Lines.L625:
        return f"{level:.0f} IRE, that is {round(level) * under.lines.millivolts:.0f} mV"
    return f"{level:.0f} IRE"
