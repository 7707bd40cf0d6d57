"""Noise, measured in what is shown by scikit-image.

Equal generations: SNR - 10 log10 n, as noise powers add (derived here).
"""

import numpy as np
import pytest
from skimage.metrics import peak_signal_noise_ratio
from skimage.restoration import estimate_sigma

from exercises.signal.arrays import Plane
from exercises.signal.patterns.bars import LUMA
from exercises.signal.picture import Look, rendered
from exercises.tape import Bench, Laid
from exercises.tape.faults.meter import RunMeter

GREY = np.full((480, 640, 3), 128, np.uint8)
EXPECTED = {1: 46.0, 2: 42.99, 3: 41.23, 4: 39.98, 5: 39.01}  # dB


def shown(generation: int, frame: int) -> Plane:
    """Luma of flat grey after so many copies on the usual bench."""
    snr = RunMeter(Bench.default()).snr(Laid("grey", 0, generation, True)) / 10
    luma: Plane = rendered(GREY, Look(snr=snr, copies=generation), frame) @ np.array(LUMA)
    return luma


@pytest.mark.parametrize("generation", EXPECTED)
@pytest.mark.parametrize("frame", [0, 417])
def test_noise_of_generations_by_comparison_with_the_clean_picture(
    generation: int, frame: int
) -> None:
    """scikit-image's peak_signal_noise_ratio."""
    measured = peak_signal_noise_ratio(
        GREY @ np.array(LUMA), shown(generation, frame), data_range=255
    )

    assert measured == pytest.approx(EXPECTED[generation], abs=0.3)


@pytest.mark.parametrize("generation", EXPECTED)
def test_noise_of_generations_by_estimate_from_the_picture_alone(generation: int) -> None:
    """scikit-image's estimate_sigma."""
    measured = 20 * np.log10(255 / estimate_sigma(shown(generation, 3)))

    assert measured == pytest.approx(EXPECTED[generation], abs=0.3)


def test_noise_is_new_in_every_frame() -> None:
    """numpy's correlation of two frames' noise."""
    first, second = (shown(3, frame) - 128 for frame in (8, 9))

    assert abs(np.corrcoef(first.ravel(), second.ravel())[0, 1]) < 0.02
