"""What a clip says in words, against the samples that are played."""

from functools import cache

import numpy as np
import pytest

from exercises.drills.asks import Json
from exercises.drills.kinds.set_sound_level import KIND as SET_SOUND_LEVEL
from exercises.drills.media.rendering import soundtrack
from exercises.drills.question import Question
from exercises.signal.meters.vu import peak
from exercises.signal.sound.hearing import Hearing
from exercises.signal.sound.samples import RATE, Samples
from exercises.tape import read_edit_session
from tests.exercises.drills.made import made

WINDOW = RATE // 20  # 50 ms


def second_take(clip: Json) -> Samples:
    session = read_edit_session(clip["session"])
    tracks = {name: soundtrack(sound) for name, sound in clip["sounds"].items()}
    start = session.edits[1].at
    return Hearing(session.recorded(), session.bench, tracks, start, clip["end"]).samples()


def levels(samples: Samples) -> Samples:
    """dB of each 50 ms, the loudest last."""
    pieces = samples[: len(samples) // WINDOW * WINDOW].reshape(-1, WINDOW)
    return np.sort(10 * np.log10(np.square(pieces).mean(axis=1) + 1e-12))


def over(samples: Samples, share: float) -> float:
    """How far the loudest stand over what so large a share of the take is under, in dB."""
    found = levels(samples)
    return float(found[round(0.95 * len(found))] - found[round(share * len(found))])


def first(situation: str) -> Question:
    found = (made(SET_SOUND_LEVEL, seed) for seed in range(300))
    return next(each for each in found if each.situation == situation)


@cache
def heard(situation: str) -> tuple[Samples, Samples]:
    """The second take as asked about, and as it should be."""
    *_, asked, best = first(situation).media
    return second_take(asked), second_take(best)


def test_take_that_is_set_by_hand_reaches_line_up() -> None:
    """IEC 60268-17: a VU meter’s needle at 0."""
    _, best = heard("left-softer")

    assert peak(best) / 10 == pytest.approx(0, abs=1)


def test_limiter_leaves_a_take_alone_that_is_set_right() -> None:
    limited, by_hand = heard("set-softer")

    assert np.abs(limited - by_hand).max() < 0.1 * np.abs(by_hand).max()
    assert over(limited, 0.5) == pytest.approx(over(by_hand, 0.5), abs=0.3)


def test_limiter_over_a_whole_take_brings_its_words_to_one_level() -> None:
    pressed, by_hand = heard("limited-louder")

    assert over(pressed, 0.5) < over(by_hand, 0.5) - 1.5
    assert peak(pressed) / 10 < 3


def test_automatic_gain_brings_the_room_within_twenty_decibels_or_so() -> None:
    swelling, by_hand = heard("automatic-louder")

    assert over(swelling, 0.2) < over(by_hand, 0.2) - 10


def test_take_that_is_left_soft_is_as_soft_as_its_words_say() -> None:
    left, _ = heard("left-softer")
    question = first("left-softer")
    told = question.key["units"][question.key["start"]]

    assert told.endswith(f"{peak(left) / 10:.0f} VU".replace("-", "−")) or abs(peak(left)) > 60
