"""What differs from a brief, in words."""

import pytest

from exercises.tape import Bench, Brief, Difference, DifferenceKind, Rate, Wanted
from exercises.tape.explaining.differing import differing

BENCH = Bench.default(Rate.R25)
BRIEF = Brief(picture=(Wanted("picture", "Tape 3", in_=500, out=750, at=1000),))

TOLD = {
    "early": (
        Difference(DifferenceKind.EARLY, "picture", 1000, 1250, shot=0, by=30),
        "The picture lies 1 s 5 frames too early.",
    ),
    "missing": (
        Difference(DifferenceKind.MISSING, "picture", 1050, 1250, shot=0),
        "The picture is missing; Tape 3 is wanted there, from 00:00:22:00 on.",
    ),
    "wrong": (
        Difference(DifferenceKind.WRONG_SHOT, "picture", 1000, 1250, shot=0),
        "Another picture lies there; Tape 3 is wanted there, from 00:00:20:00 on.",
    ),
    "lost": (
        Difference(DifferenceKind.PULSES_LOST, "control", 1000, 1050),
        "The pulses that were there are gone.",
    ),
    "touched": (
        Difference(DifferenceKind.TOUCHED, "sound", 0, 50),
        "The sound that had to stay was recorded over.",
    ),
    "extra": (
        Difference(DifferenceKind.EXTRA, "picture", 0, 50),
        "There is picture where none is wanted.",
    ),
    "generation": (
        Difference(DifferenceKind.GENERATION, "picture", 1000, 1250, shot=0, by=1),
        "The picture is 1 generation too many.",
    ),
}


@pytest.mark.parametrize(("difference", "sentence"), TOLD.values(), ids=TOLD)
def test_a_difference_is_told_in_one_sentence(difference: Difference, sentence: str) -> None:
    assert differing(difference, BRIEF, BENCH) == sentence
