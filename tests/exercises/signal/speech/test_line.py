from pathlib import Path

import numpy as np
import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.samples import BLOCK, LINE_UP, SPEECH_PEAKS
from exercises.signal.speech import line as recordings
from exercises.signal.speech.line import lines
from exercises.signal.speech.making import TAKEN_IN
from exercises.signal.speech.script import script
from exercises.tape.levels import gained

NAMES = sorted(lines())
FOLDER = Path(recordings.__file__).parent


def test_every_line_of_the_script_is_recorded_as_written() -> None:
    written = {
        name: " ".join(part for part in line.says if isinstance(part, str) and part != TAKEN_IN)
        for name, line in script().items()
    }

    assert {name: line.text for name, line in lines().items()} == written


def test_two_people_speak() -> None:
    assert {line.speaker for line in lines().values()} == {"interviewer", "keeper"}


@pytest.mark.parametrize("name", NAMES)
def test_needle_reaches_line_up_and_peaks_stay_below(name: str) -> None:
    samples = lines()[name].samples

    assert vu.peak(samples) == pytest.approx(0, abs=4)
    assert np.abs(samples).max() <= gained(LINE_UP, SPEECH_PEAKS) + 2**-15


@pytest.mark.parametrize("name", NAMES)
def test_line_ends_with_its_last_word(name: str) -> None:
    line = lines()[name]

    assert abs(len(line.samples) - line.length * BLOCK) <= BLOCK


@pytest.mark.parametrize("name", NAMES)
def test_only_marked_stretches_sound(name: str) -> None:
    line = lines()[name]
    silent = np.ones(len(line.samples), bool)
    for start, end in [*(word.heard for word in line.words), *line.breaths]:
        silent[start * BLOCK : (end + 1) * BLOCK] = False

    unmarked = np.abs(line.samples[silent])

    assert unmarked.max(initial=0) < LINE_UP / 8


@pytest.mark.parametrize("name", NAMES)
def test_pauses_lie_between_words_that_follow_one_another(name: str) -> None:
    line = lines()[name]
    gaps = [
        (before.heard.end, after.heard.start)
        for before, after in zip(line.words, line.words[1:], strict=False)
    ]

    assert [*line.pauses] == [gap for gap in gaps if gap[1] - gap[0] >= 150]


@pytest.mark.parametrize("name", [name for name in NAMES if lines()[name].breaths])
def test_breath_is_softer_than_speech_and_louder_than_a_room(name: str) -> None:
    line = lines()[name]

    for start, end in line.breaths:
        assert -300 < vu.peak(line.samples[start * BLOCK : end * BLOCK]) < -100


def test_recordings_are_small() -> None:
    assert sum(path.stat().st_size for path in FOLDER.glob("*.wav")) < 1_000_000
