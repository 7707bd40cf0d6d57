"""The heads' signal by tracking: a head as wide as its track sees what it covers.

From memory: e = max(0, 1 - |x|/w), so -0.92 dB a tenth of a track off,
-2.5 a quarter, -6.02 half, -12.04 three quarters, -20 nine tenths.
"""

import numpy as np
import pytest

from exercises.signal.picture.envelope import bow, envelope, seen_at

DECIBELS = {0: 0.0, 10: -0.92, 25: -2.50, 50: -6.02, 75: -12.04, 90: -20.0}


@pytest.mark.parametrize("side", [1, -1])
@pytest.mark.parametrize("tracking", DECIBELS)
def test_signal_falls_as_the_head_leaves_its_track(tracking: int, side: int) -> None:
    """From memory: a head as wide as its track sees the part of it that it covers, 1 - |x|/w."""
    seen = float(seen_at(np.array([side * tracking], np.float32))[0])

    assert 20 * np.log10(seen) == pytest.approx(DECIBELS[tracking], abs=0.005)


@pytest.mark.parametrize("side", [1, -1])
def test_field_as_a_whole_is_half_at_half_a_track(side: int) -> None:
    """Derived here from the same law: the track's own bow takes from some rows what it gives to
    others.
    """
    assert 20 * np.log10(envelope(480, side * 50.0).mean()) == pytest.approx(-6.02, abs=0.01)
    assert float(bow(480).mean()) == pytest.approx(0, abs=1e-4)


def test_picture_is_best_on_the_track_and_alike_on_either_side() -> None:
    """From memory, the same law; it is the setting at which noise is least that is called right
    (common practice).
    """
    means = [float(envelope(480, float(tracking)).mean()) for tracking in range(-100, 101, 5)]

    assert max(means) == means[20]
    assert means == pytest.approx(means[::-1], abs=1e-3)
    assert means[:21] == sorted(means[:21])
