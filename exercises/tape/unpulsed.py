"""Tape without pulses: what is blank of it, and where something is recorded all the same."""

from collections.abc import Iterator
from itertools import groupby, pairwise
from typing import NamedTuple

from exercises.tape.tape import Tape


class Unpulsed(NamedTuple):
    """`[start, end)` without a pulse; `recorded`: a picture or a sound lies there."""

    start: int
    end: int
    recorded: bool


def unpulsed(tape: Tape, start: int, end: int) -> Iterator[Unpulsed]:
    """Of `[start, end)`, which is without pulses throughout, pieces as long as can be.

    Neither can be used, but they look and sound different: blank tape gives snow or is muted;
    recorded without pulses, nothing locks, and what is there drifts and tears.
    """
    tracks = (tape.picture.laid, tape.sound.laid)
    edges = {edge for track in tracks for run in track.between(start, end) for edge in run[:2]}
    cuts = sorted({start, end, *(edge for edge in edges if start < edge < end)})
    pieces = [
        Unpulsed(first, last, bool(tape.picture.at(first) or tape.sound.at(first)))
        for first, last in pairwise(cuts)
    ]
    for recorded, alike in groupby(pieces, key=lambda piece: piece.recorded):
        joined = list(alike)
        yield Unpulsed(joined[0].start, joined[-1].end, recorded)
