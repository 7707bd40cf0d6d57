from itertools import pairwise

import numpy as np
import pytest

from exercises.signal.sound.samples import BLOCK, RATE
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import reel
from exercises.tape.rate import Rate


def test_lines_follow_one_another_after_their_pause() -> None:
    talk = reel("ask-3", "keeper-8", begin=500, pause=700)

    first, second = talk.placed
    assert (first.at, second.at) == (500, 500 + lines()["ask-3"].length + 700)


def test_reel_sounds_where_its_lines_lie() -> None:
    talk = reel("ask-3", "keeper-8", begin=500, pause=700)

    heard = talk.read(0, 5 * RATE)

    at, samples = talk.placed[1].at * BLOCK, lines()["keeper-8"].samples
    np.testing.assert_array_equal(heard[at : at + len(samples)], samples)
    assert not heard[: 500 * BLOCK].any()


def test_any_part_of_a_reel_can_be_read() -> None:
    talk = reel("ask-3", "keeper-8", begin=500)
    whole = talk.read(-100, 5 * RATE)

    parts = [talk.read(at, 777) for at in range(-100, 5 * RATE - 100, 777)]

    np.testing.assert_array_equal(np.concatenate(parts)[: 5 * RATE], whole)


@pytest.mark.parametrize("rate", list(Rate))
def test_marks_are_at_the_frames_nearest_to_what_is_heard(rate: Rate) -> None:
    talk = reel(*lines(), begin=1234)

    marks = talk.marks(rate)

    for spans, heard in (
        (marks.words, [word.heard for word in talk.words]),
        (marks.breaths, talk.breaths),
    ):
        found = [float(1000 * frame / rate.fraction) for span in spans for frame in span]
        expected = [each for stretch in heard for each in stretch]
        np.testing.assert_allclose(found, expected, atol=510 / float(rate.fraction))


def test_no_word_overlaps_the_next_at_either_rate() -> None:
    talk = reel(*lines())

    for rate in Rate:
        words = talk.marks(rate).words
        assert all(before.end <= after.start for before, after in pairwise(words))
