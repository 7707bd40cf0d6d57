"""The register of scenes."""

from collections.abc import Callable

from exercises.signal.arrays import STANDARD, Picture, Size
from exercises.signal.scenes import (
    harbour,
    interview,
    lever,
    passing,
    photograph,
    ripples,
    title,
    tools,
    turning,
    winch,
)

SCENES: dict[str, Callable[[int, Size], Picture]] = {
    "harbour": harbour.picture,
    "turning": turning.picture,
    "ripples": ripples.picture,
    "winch": winch.picture,
    "lever": lever.picture,
    "keeper": interview.keeper,
    "clerk": interview.clerk,
    "tools": tools.picture,
    "photograph": photograph.picture,
    "passing": passing.picture,
    "title": title.picture,
}

# Those with a face, whose mouth can be told how far to open.
TALKING: dict[str, Callable[[int, Size, float | None], Picture]] = {
    "keeper": interview.keeper,
    "clerk": interview.clerk,
}


def frame(scene: str, n: int, size: Size = STANDARD, *, mouth: float | None = None) -> Picture:
    """Frame ``n`` of a scene, from 0 on: rows × columns × red, green, blue.

    mouth  how far a face's mouth is open, 0 to 1 (`speech` makes it from loudness or from
           marks); None: it talks to itself. Scenes without a face take no notice.
    """
    if mouth is not None and scene in TALKING:
        return TALKING[scene](n, size, mouth)
    return SCENES[scene](n, size)
