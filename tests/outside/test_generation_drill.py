"""The figures that “which generation?” asks for, against the sum of noise powers."""

import pytest

from exercises.drills.kinds.which_generation import KIND as WHICH_GENERATION
from exercises.drills.kinds.which_generation.answers import answer
from exercises.drills.kinds.which_generation.reels import CopiedShot, CopiedTape
from exercises.drills.setting.quay_street import CARDS
from tests.exercises.drills.made import many

# 46 dB less 10 log10 n.
TABLE = {2: 43.0, 3: 41.2, 4: 40.0, 5: 39.0, 6: 38.2}


@pytest.mark.parametrize(("generation", "decibels"), TABLE.items())
def test_equal_copies_are_those_of_the_table(generation: int, decibels: float) -> None:
    """Derived here: noise powers add, so n equal recordings cost 10 log10 n dB."""
    reel = CopiedTape("Tape 1", 46)
    for _ in range(generation - 1):
        reel = CopiedTape("Tape 2", 46, reel)
    segment = CopiedShot(CARDS[0], reel)

    assert answer([segment], segment, "", ()) == {
        "generations": [[str(generation)]],
        "noise": decibels,
        "again": "Tape 1",
    }


def test_noise_powers_add() -> None:
    """Derived here: amplitudes of independent noise add as squares; done with amplitudes."""
    for seed, question in enumerate(many(WHICH_GENERATION, 100)):
        chain = question.key["chains"][question.key["asked"]]
        amplitude = sum((10 ** (-snr / 20)) ** 2 for snr in chain) ** 0.5
        reached = question.right["noise"]

        assert 10 ** (-reached / 20) == pytest.approx(amplitude, rel=0.007), seed
