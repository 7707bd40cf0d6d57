import ctypes.util

import numpy as np
import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.samples import LINE_UP, RATE, SPEECH_PEAKS, average_level
from exercises.signal.speech import line as recordings
from exercises.signal.speech import making
from exercises.signal.speech.breath import LEVEL, breath
from exercises.signal.speech.levelling import levelled
from exercises.signal.speech.phrase import phrase, resampled
from exercises.signal.speech.script import script
from exercises.signal.speech.synthesis import Spoken
from exercises.tape.levels import gained
from tests.waves import strength, tone

HAS_VOICE = ctypes.util.find_library("espeak-ng")


def test_resampled_tone_keeps_its_pitch_and_strength() -> None:
    fast = np.sin(2 * np.pi * 1000 * np.arange(44_100) / 44_100)

    slow = resampled(fast, 44_100)

    assert len(slow) == RATE
    assert strength(slow.astype(np.float32), 1000) == pytest.approx(1, abs=0.001)


def test_phrase_loses_the_silence_around_it_and_its_words_theirs() -> None:
    wave = np.zeros(2 * RATE)
    for start, end in ((0.2, 0.5), (0.8, 1.2)):
        wave[int(start * RATE) : int(end * RATE)] = tone(0, seconds=end - start)
    spoken = Spoken((wave * 32767).astype(np.int16), (3000, 11_000), RATE)

    found = phrase(spoken)

    expected = ((0, 0.3), (0.6, 1.0))
    for word, (start, end) in zip(found.words, expected, strict=True):
        assert word == pytest.approx((start * RATE, end * RATE), abs=0.005 * RATE)
    assert len(found.samples) == pytest.approx(RATE, abs=0.01 * RATE)


def test_levelled_speech_reaches_line_up_with_its_peaks_turned_down() -> None:
    peaky = np.zeros(2 * RATE)
    peaky[::160] = 1  # a buzz of 100 Hz, as high as can be for its average

    done = levelled(peaky)

    assert np.abs(done).max() <= gained(LINE_UP, SPEECH_PEAKS) * 1.001
    assert vu.peak(levelled(tone(-90, seconds=1).astype(float)).astype(np.float32)) < 1


def test_breath_has_its_level_and_stops() -> None:
    air = breath(1, 5000)

    assert average_level(air) == pytest.approx(LEVEL, abs=0.1)
    assert np.abs(air[-20:]).max() < 0.05 * np.abs(air).max()


def test_draft_marks_what_it_lays() -> None:
    draft = making.Draft()
    draft.breathe()
    draft.pause(160)
    draft.breathe()

    assert making.marks(draft)["breaths"] == [(0, 340), (490, 830)]


@pytest.mark.skipif(not HAS_VOICE, reason="espeak-ng is not installed: nothing can be said anew")
def test_recordings_are_what_the_script_makes() -> None:
    for name, line in script().items():
        draft = making.drafted(line.says, line.voice)
        kept = recordings.lines()[name].samples

        made = making.recorded(draft, name)

        assert len(made) == pytest.approx(len(kept), rel=0.01)
        count = min(len(made), len(kept))
        assert np.corrcoef(made[:count], kept[:count])[0, 1] > 0.5
