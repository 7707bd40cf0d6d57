"""Altered rules of levels against hand-made cases: the faults that a believer expects."""

from collections.abc import Collection

import pytest

from exercises.drills.beliefs import LEVEL_BELIEFS, levelled
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import (
    Bench,
    Carried,
    FaultKind,
    Insert,
    Levels,
    Machines,
    Marks,
    Rate,
    SoundLevel,
    SoundMode,
    Source,
    Span,
    Take,
    Tape,
    faults,
    record,
)

BENCH = Bench.default(Rate.R25)
WORDS = Marks(words=(Span(300, 320), Span(345, 370)))


def laid(levels: Levels, machines: Machines) -> Tape:
    """One take on a prepared tape."""
    source = Source("A", (Take(0, 1000, carried=Carried(levels, marks=WORDS)),))
    black = Tape.blank(2000).with_pass(0, 2000, "black")
    edit = Insert(source, 300, 400, 600, picture=True, sound=True, machines=machines)
    return record(black, edit, BENCH, 0)


def expected(tape: Tape, beliefs: Collection[str]) -> set[FaultKind]:
    return {fault.kind for fault in faults(*levelled(tape, BENCH, beliefs))}


def heard(level: int, mode: SoundMode, gain: int = 0) -> Tape:
    made = Machines(sound=SoundLevel(mode, gain))
    return laid(Levels(sound=level, room=level - 350), made)


@pytest.mark.parametrize(
    ("belief", "tape", "true", "believed"),
    [
        (
            "level-is-seen-later",
            laid(Levels(white=60), Machines(picture_gain=0)),
            {FaultKind.FLAT_PICTURE},
            set(),
        ),
        (
            "level-is-seen-later",
            laid(Levels(white=100), Machines(picture_gain=30)),
            {FaultKind.CLIPPED_PICTURE},
            set(),
        ),
        ("one-level-for-all", heard(-140, SoundMode.BY_HAND), {FaultKind.WEAK_SOUND}, set()),
        ("one-level-for-all", heard(0, SoundMode.BY_HAND, 80), {FaultKind.DISTORTED_SOUND}, set()),
        (
            "limiter-is-agc",
            heard(-140, SoundMode.LIMITER),
            {FaultKind.WEAK_SOUND},
            {FaultKind.NOISY_PAUSES},
        ),
        ("agc-evens-out", heard(-60, SoundMode.AUTOMATIC), {FaultKind.NOISY_PAUSES}, set()),
    ],
)
def test_believer_expects_other_faults(
    belief: str, tape: Tape, true: set[FaultKind], believed: set[FaultKind]
) -> None:
    assert expected(tape, ()) == true
    assert expected(tape, (belief,)) == believed


@pytest.mark.parametrize("belief", LEVEL_BELIEFS)
def test_belief_about_levels_is_a_known_misconception(belief: str) -> None:
    assert MISCONCEPTIONS[belief].id == belief


@pytest.mark.parametrize("belief", LEVEL_BELIEFS)
def test_belief_about_levels_sees_nothing_where_nothing_is_wrong(belief: str) -> None:
    assert expected(heard(0, SoundMode.BY_HAND), (belief,)) == set()


def test_faults_stay_those_of_the_edits_that_made_them() -> None:
    tape, bench = levelled(heard(-140, SoundMode.LIMITER), BENCH, ("limiter-is-agc",))

    assert {fault.edit for fault in faults(tape, bench)} == {0}
