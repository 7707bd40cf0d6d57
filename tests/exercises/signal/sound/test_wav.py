import io
import wave

import numpy as np
import pytest

from exercises.signal.sound import wav
from exercises.signal.sound.samples import RATE
from tests.waves import tone


def test_file_is_read_back_as_it_was() -> None:
    samples = tone(0, seconds=0.5)

    with wave.open(io.BytesIO(wav.file(samples))) as file:
        form = (file.getnchannels(), file.getsampwidth(), file.getframerate(), file.getnframes())
        held = np.frombuffer(file.readframes(file.getnframes()), "<i2")

    assert form == (1, 2, RATE, len(samples))
    np.testing.assert_allclose(held / 32767, samples, atol=1 / 65000)


def test_too_loud_is_cut_off_at_full_scale() -> None:
    assert wav.sixteen_bits(np.array([2, -2, 1], np.float32)).tolist() == [32767, -32767, 32767]


def test_streamed_file_is_the_same() -> None:
    samples = tone(0, seconds=0.5)

    streamed = b"".join(wav.streamed(np.array_split(samples, 7), len(samples)))

    assert streamed == wav.file(samples)


def test_long_file_is_refused() -> None:
    with pytest.raises(ValueError, match="a minute at most"):
        wav.file(np.zeros(wav.LONGEST + 1, np.float32))
