"""Levels of our clips against loudness by ITU-R BS.1770, as pyloudnorm measures it.

Its filters as first published ("DeMan") put 997 Hz at full scale at -3.01, as the
Recommendation has it.
"""

from functools import cache

import numpy as np
import pyloudnorm
import pytest

from exercises.signal.sound.hearing import Hearing
from exercises.signal.sound.noise import room_tone
from exercises.signal.sound.recorder import recorded
from exercises.signal.sound.samples import BLOCK, RATE, Samples
from exercises.signal.sound.soundtrack import Soundtrack
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import reel
from exercises.tape import (
    Assemble,
    Bench,
    Machines,
    Rate,
    SoundLevel,
    Source,
    Take,
    Tape,
    record,
)
from exercises.tape.levels import LINED_UP
from tests.waves import tone

FULL_SCALE = -3.01  # LUFS of a sine of 997 Hz at full scale on one channel (ITU-R BS.1770)
LINE_UP = -18  # dB under full scale (EBU R 68)
BENCH = Bench.default(Rate.R25)
TALK = reel("keeper-1", "keeper-2", "ask-2", "keeper-4", "keeper-7", begin=6000, pause=500)


@cache
def meter() -> pyloudnorm.Meter:
    return pyloudnorm.Meter(RATE, filter_class="DeMan")


def loudness(samples: Samples) -> float:
    return float(meter().integrated_loudness(samples.astype(np.float64)))


@pytest.mark.parametrize("level", [-200, -60, 0, 30, 90])
def test_tone_is_as_loud_as_its_level(level: int) -> None:
    """ITU-R BS.1770 by pyloudnorm; line-up 18 dB under full scale, EBU R 68."""
    measured = loudness(tone(level, seconds=5, hertz=997))

    assert measured == pytest.approx(FULL_SCALE + LINE_UP + level / 10, abs=0.2)


@pytest.mark.parametrize("gain", [-100, -60, 20])
def test_recorded_speech_is_as_loud_as_the_knob_says(gain: int) -> None:
    """ITU-R BS.1770 by pyloudnorm, before and after."""
    speech = TALK.read(6000 * BLOCK, 15 * RATE)

    plain, turned = (
        loudness(recorded(speech, SoundLevel(gain=each), BENCH, LINED_UP)) for each in (0, gain)
    )

    assert turned - plain == pytest.approx(gain / 10, abs=0.2)


@pytest.mark.parametrize("gain", [-100, -60, 20])
def test_jump_at_an_edit_is_as_large_as_the_model_says(gain: int) -> None:
    """ITU-R BS.1770 by pyloudnorm, on either side of the edit."""
    tape = Tape.blank(2000)
    source = Source("talk", (Take(0, 1500),))
    for at, knob in ((0, 0), (500, gain)):
        made = Machines(sound=SoundLevel(gain=knob))
        tape = record(tape, Assemble(source, in_=150, out=525, at=at, machines=made), BENCH, 0)
    soundtracks = {"talk": Soundtrack(TALK, room_tone())}

    before, after = (
        loudness(Hearing(tape, BENCH, soundtracks, at, at + 375).samples()) for at in (130, 630)
    )

    assert after - before == pytest.approx(gain / 10, abs=0.2)


@pytest.mark.parametrize("name", sorted(lines()))
def test_lined_up_speech_is_about_as_loud_as_line_up_tone(name: str) -> None:
    """ITU-R BS.1770 by pyloudnorm. A VU meter and it need not agree on speech: 4 LU is this
    course's own band (derived here).
    """
    assert loudness(lines()[name].samples) == pytest.approx(FULL_SCALE + LINE_UP, abs=4)
