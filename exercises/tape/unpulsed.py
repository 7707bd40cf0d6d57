"""Tape without pulses: what is blank of it, and where something is recorded all the same."""

from collections.abc import Iterator
from itertools import groupby
from typing import NamedTuple

from exercises.tape.passages import Passage, passages
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
    for recorded, alike in groupby(passages(tape, start, end, relock=0), key=_recorded):
        joined = list(alike)
        yield Unpulsed(joined[0].start, joined[-1].end, recorded)


def _recorded(passage: Passage) -> bool:
    return bool(passage.picture or passage.sound)
