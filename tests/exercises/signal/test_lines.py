import pytest

from exercises.signal.lines import Lines
from exercises.tape import Rate


def test_rates_have_their_line_systems() -> None:
    assert [Lines.of(rate) for rate in (Rate.R29_97, Rate.R25)] == [Lines.L525, Lines.L625]


@pytest.mark.parametrize("system", Lines)
def test_shade_is_the_inverse_of_level(system: Lines) -> None:
    assert system.level(1) == 100
    assert system.shade(system.level(0.3)) == pytest.approx(0.3)


def test_frames_fill_their_time() -> None:
    """525 lines of 63.5556 µs, and 625 of 64, are two fields (SMPTE 170M, ITU-R BT.1700)."""
    for system in Lines:
        assert system.total * system.line == pytest.approx(2000 * system.field, rel=1e-5)
