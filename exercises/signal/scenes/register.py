"""The register of scenes."""

from collections.abc import Callable

from exercises.signal.arrays import Picture, Size
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
