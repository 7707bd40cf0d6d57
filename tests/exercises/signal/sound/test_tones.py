import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.samples import LINE_UP, RATE, average_level
from exercises.signal.sound.tones import HUM, hum, line_up_tone
from tests.waves import strength


def test_line_up_tone_reads_0_vu() -> None:
    assert vu.readings(line_up_tone().read(0, 2 * RATE))[-1] == pytest.approx(0, abs=0.2)


def test_line_up_tone_is_1_khz() -> None:
    assert strength(line_up_tone().read(5, RATE), 1000) == pytest.approx(LINE_UP, rel=1e-4)


@pytest.mark.parametrize("mains", [50, 60])
def test_hum_holds_the_mains_and_its_harmonics(mains: int) -> None:
    samples = hum(mains).samples

    found = [strength(samples, order * mains) for order, _ in HUM]

    assert [each / found[0] for each in found] == pytest.approx([share for _, share in HUM])
    assert average_level(samples) == pytest.approx(0, abs=0.1)
