"""The marks of the recorded lines against auditok, which finds sound by its energy."""

from itertools import pairwise

import numpy as np
import pytest
from auditok import split

from exercises.signal.sound.samples import BLOCK, RATE, Samples
from exercises.signal.sound.wav import sixteen_bits
from exercises.signal.speech.line import lines

FLOOR = 40  # auditok's dB over one step of 16 bits: 29 dB under a VU meter's 0
STEP = 0.005  # s that auditok looks at at a time
LEAST = 0.14  # s of silence (from memory): less is a lip that closes, and is no pause


def pauses(samples: Samples) -> list[tuple[float, float]]:
    """Between stretches of sound, in ms, as auditok hears it."""
    regions = split(
        sixteen_bits(samples).tobytes(),
        sampling_rate=RATE,
        sample_width=2,
        channels=1,
        energy_threshold=FLOOR,
        analysis_window=STEP,
        min_dur=0.03,
        max_dur=60,
        max_silence=LEAST,
        max_trailing_silence=0,
    )
    found = [(region.start or 0, len(region) / RATE) for region in regions]
    return [
        (1000 * (start + lasts), 1000 * after) for (start, lasts), (after, _) in pairwise(found)
    ]


@pytest.mark.parametrize("name", sorted(lines()))
def test_pauses_lie_where_the_marks_say(name: str) -> None:
    """auditok. A pause is 140 ms or more (from memory); a stop's closure lasts 50 to 120 ms
    (Languages 2023, 8(1), 23).
    """
    line = lines()[name]
    speech = line.samples.copy()
    for start, end in line.breaths:  # a breath is heard in a pause, and is not its end
        speech[start * BLOCK : end * BLOCK] = 0

    found = pauses(speech)

    assert len(found) == len(line.pauses)
    if found:
        np.testing.assert_allclose(found, line.pauses, atol=30)


def test_some_lines_pause() -> None:
    """auditok has pauses to find: six and more, by the marks that the check above holds to it."""
    assert sum(len(line.pauses) for line in lines().values()) >= 6
