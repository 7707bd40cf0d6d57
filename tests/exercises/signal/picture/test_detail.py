import numpy as np
import pytest

from exercises.signal.picture.detail import _blur, _steps, passes, spread


@pytest.mark.parametrize("count", range(1, 40))
def test_means_add_their_variance_and_stay_in_place(count: int) -> None:
    """A quarter column² a pass, whether the neighbour is near or, for four, far."""
    line = np.zeros((1, 256), np.int16)
    line[0, 128] = 1000
    _blur(line, count)
    columns = np.arange(256) - 128
    weight = line[0] / line.sum()
    middle = float((columns * weight).sum())

    assert sum(step * step for step in _steps(count)) == count
    assert middle == pytest.approx(-(count % 2) / 2, abs=0.15)
    assert float(((columns - middle) ** 2 * weight).sum()) == pytest.approx(count / 4, rel=0.15)
    assert line.sum() == pytest.approx(1000, rel=0.06)


def test_flat_line_stays_as_it_is() -> None:
    for count in (1, 4, 7, 19):
        line = np.full((2, 64), 1132, np.int16)
        _blur(line, count)

        assert set(line.ravel().tolist()) == {1132}


def test_passes_of_a_wider_band_are_fewer() -> None:
    assert [passes(12.15 * spread(band)) for band in (6.0, 3.0, 1.5)] == [0, 1, 5]
