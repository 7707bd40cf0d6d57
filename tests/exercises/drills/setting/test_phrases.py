from dataclasses import replace

import pytest

from exercises.drills.setting.phrases import begun, length, listed, span
from exercises.tape import Bench, Rate


@pytest.mark.parametrize(
    ("frames", "rate", "words"),
    [
        (0, Rate.R25, "0 frames"),
        (1, Rate.R25, "1 frame"),
        (25, Rate.R25, "1 second"),
        (30, Rate.R29_97, "1 second"),
        (30, Rate.R25, "1 second 5 frames"),
        (151, Rate.R29_97, "5 seconds 1 frame"),
        (1800, Rate.R29_97, "1 minute"),
        (1529, Rate.R25, "1 minute 1 second 4 frames"),
        (3600, Rate.R29_97, "2 minutes"),
    ],
)
def test_length_in_words(frames: int, rate: Rate, words: str) -> None:
    assert length(frames, rate) == words


def test_span_in_time_code() -> None:
    assert span(1500, 1512, Bench.default(Rate.R25)) == "from 00:01:00:00 to 00:01:00:12"


def test_span_in_drop_frame_code() -> None:
    bench = replace(Bench.default(Rate.R29_97), drop_frame=True)

    assert span(1799, 1800, bench) == "from 00:00:59;29 to 00:01:00;02"


def test_list_in_words() -> None:
    lists = [["a"], ["a", "b"], ["a", "b", "c"]]

    assert [listed(words) for words in lists] == ["a", "a and b", "a, b and c"]


def test_sentence_begins_with_a_capital_and_keeps_the_rest() -> None:
    assert begun("from Tape 3") == "From Tape 3"
