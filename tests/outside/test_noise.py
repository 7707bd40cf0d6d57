"""Noise, grades and detail through copies, against printed values and arithmetic."""

import pytest

from exercises.tape import FaultKind, simulate
from exercises.tape.noise import (
    chain_snr,
    equal_copies_snr,
    gaussian_bandwidth,
    grade_snr,
    noise_grade,
)

GENERATIONS = {1: 46.0, 2: 42.99, 3: 41.23, 4: 39.98, 5: 39.01, 6: 38.22}

GRADES = {5: 45.5, 4: 36.6, 3: 29.9, 2: 25.4, 1: 23.1}


@pytest.mark.parametrize(("generation", "decibels"), GENERATIONS.items())
def test_equal_copies_from_46_db(generation: int, decibels: float) -> None:
    """Derived here: noise powers add, so n equal recordings cost 10 log10 n dB."""
    assert equal_copies_snr(46, generation) == pytest.approx(decibels, abs=0.005)
    assert chain_snr([46] * generation) == pytest.approx(decibels, abs=0.005)


@pytest.mark.parametrize(
    ("chain", "decibels"),
    [
        ([46, 43], 41.24),
        # By hand: 10 ** -4.0 + 10 ** -4.0 is 2e-4, which is 36.99 dB.
        ([40, 40], 36.99),
        # By hand: 1e-4 + 1e-5 is 1.1e-4, which is 39.59 dB: the poor one decides.
        ([40, 50], 39.59),
    ],
)
def test_unequal_copies(chain: list[float], decibels: float) -> None:
    """Derived here: the powers of the chain's noises, added by hand."""
    assert chain_snr(chain) == pytest.approx(decibels, abs=0.005)


@pytest.mark.parametrize(("generation", "decibels"), list(GENERATIONS.items())[1:])
def test_tape_model_measures_the_table(generation: int, decibels: float) -> None:
    """Derived here, the same table: a shot of each generation, copied once; asked for a grade
    that none of them has.
    """
    answer = simulate(
        {
            "bench": {"lock": 0, "snr": 460, "limits": {"grade": 5}},
            "master": {"length": 100},
            "sources": {"A": {"takes": [{"start": 0, "end": 99, "generation": generation - 1}]}},
            "edits": [{"mode": "assemble", "source": "A", "in": 0, "out": 99, "at": 0}],
        }
    )

    faults = answer["faults"]
    assert isinstance(faults, list)
    assert [(fault["kind"], fault["measured"]["value"]) for fault in faults] == [
        (FaultKind.TOO_MANY_GENERATIONS, round(10 * decibels))
    ]


@pytest.mark.parametrize(("grade", "decibels"), GRADES.items())
def test_noise_at_each_grade(grade: int, decibels: float) -> None:
    """A “CATV image quality subjective evaluation table” prints the CCIR formula for weighted
    noise and its values at the five grades of ITU-R BT.500.
    """
    assert grade_snr(grade) == pytest.approx(decibels, abs=0.05)
    assert noise_grade(grade_snr(grade)) == pytest.approx(grade)


@pytest.mark.parametrize(
    ("decibels", "grade"),
    [(43, 4.74), (41.2, 4.55), (40, 4.41), (38, 4.18)],
)
def test_grade_of_noise(decibels: float, grade: float) -> None:
    """Derived here: the same formula turned round, Q = (1 + sqrt(1 + 4.4 (SN - 23))) / 2.2."""
    assert noise_grade(decibels) == pytest.approx(grade, abs=0.005)


@pytest.mark.parametrize(("stages", "share"), [(1, 1), (2, 0.707), (3, 0.577), (4, 0.5)])
def test_bandwidth_of_gaussian_stages(stages: int, share: float) -> None:
    """Derived here: rise times add as squares, so the bandwidth falls with the root of n."""
    assert gaussian_bandwidth(stages) == pytest.approx(share, abs=0.0005)
