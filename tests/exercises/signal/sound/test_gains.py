"""Limiter and automatic gain at work, against the tape model's arithmetic of them."""

from itertools import pairwise

import numpy as np
import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.automatic import Following
from exercises.signal.sound.limiting import Limiting
from exercises.signal.sound.noise import room_tone
from exercises.signal.sound.samples import BLOCK, RATE, Samples, average_level
from exercises.signal.speech.reel import Reel, reel
from exercises.tape.gain_control import AUTOMATIC_GAIN, LIMITER
from exercises.tape.levels import gained
from tests.waves import rms_level, tone

TALK = reel("keeper-2", "keeper-4", "keeper-6", begin=1500, pause=1000)


def talk(level: int, room: int = -400) -> Samples:
    count = (TALK.placed[-1].end + 500) * BLOCK
    speech, around = TALK.read(0, count), room_tone().read(0, count)
    return speech * np.float32(gained(1, level)) + around * np.float32(gained(1, room))


def pauses(reel: Reel) -> list[tuple[int, int]]:
    """Where nobody speaks or breathes between lines, in ms."""
    heard = sorted([*(word.heard for word in reel.words), *reel.breaths])
    return [
        (before.end, after.start)
        for before, after in pairwise(heard)
        if after.start - before.end > 900
    ]


@pytest.mark.parametrize("level", [-100, 0, 60])
def test_automatic_gain_brings_speech_to_the_level_of_the_tape_model(level: int) -> None:
    rest = AUTOMATIC_GAIN.settled(level)

    heard = Following(AUTOMATIC_GAIN, gain=rest).apply(talk(level, level - 400))

    # Each word after a pause begins too loud, until the attack has turned it down.
    assert vu.peak(heard) == pytest.approx(level + rest, abs=20)


@pytest.mark.parametrize("level", [-100, 0, 60])
def test_automatic_gain_lifts_pauses_as_the_tape_model_says(level: int) -> None:
    rest, room = AUTOMATIC_GAIN.settled(level), level - 400
    before = talk(level, room)
    after = Following(AUTOMATIC_GAIN, gain=rest).apply(before)

    for start, end in pauses(TALK):
        late = slice((end - 50) * BLOCK, end * BLOCK)
        lifted = average_level(after[late]) - average_level(before[late])
        expected = AUTOMATIC_GAIN.after(end - 25 - start, gain=rest, level=room)
        assert lifted == pytest.approx(expected, abs=10)


def test_automatic_gain_turns_down_within_its_attack() -> None:
    following = Following(AUTOMATIC_GAIN, gain=AUTOMATIC_GAIN.settled(-400))

    following.apply(tone(0, seconds=0.1))

    expected = AUTOMATIC_GAIN.after(100, gain=200, level=0)
    assert following.gain == pytest.approx(expected, abs=10)


def test_automatic_gain_leaves_line_up_tone_alone() -> None:
    heard = Following(AUTOMATIC_GAIN).apply(tone(0, seconds=2))

    assert rms_level(heard[RATE:]) == pytest.approx(0, abs=1)


@pytest.mark.parametrize("level", [-60, 0, 60, 120])
def test_limiter_brings_speech_to_the_level_of_the_tape_model(level: int) -> None:
    heard = Limiting(LIMITER).apply(talk(level))

    assert vu.peak(heard) == pytest.approx(LIMITER.out(level), abs=17)


def test_limiter_does_not_lift_what_is_soft() -> None:
    soft = talk(-120)

    np.testing.assert_array_equal(Limiting(LIMITER).apply(soft), soft)


@pytest.mark.parametrize("kind", ["limiter", "automatic"])
def test_gain_goes_on_from_call_to_call(kind: str) -> None:
    def control() -> Limiting | Following:
        return Limiting(LIMITER) if kind == "limiter" else Following(AUTOMATIC_GAIN)

    loud = talk(90)
    whole = control().apply(loud)
    going = control()

    parts = [going.apply(loud[at : at + 100 * BLOCK]) for at in range(0, len(loud), 100 * BLOCK)]

    np.testing.assert_allclose(np.concatenate(parts), whole, rtol=1e-5, atol=1e-7)
