"""Sums on the clock, worked again with OpenTimelineIO (SMPTE ST 12-1, EBU 25-frame code)."""

import pytest
from opentimelineio.opentime import RationalTime, from_timecode, to_timecode

from exercises.drills.asks import Moment
from exercises.drills.kinds.sums_on_the_clock import KIND as SUMS

RATES = {"29.97": 30000 / 1001, "25": 25}


def added(ask: Moment, lines: list[dict[str, str]]) -> str:
    rate = RATES[ask.rate]
    frames = sum(
        (-1 if line["sign"] == "−" else 1) * from_timecode(line["value"], rate).value
        for line in lines
    )
    return str(to_timecode(RationalTime(frames, rate), rate, ask.drop))


@pytest.mark.parametrize("seed", range(300))
def test_working_comes_to_the_result(seed: int) -> None:
    """OpenTimelineIO, on SMPTE ST 12-1 and EBU 25-frame code."""
    question = SUMS.make(seed)
    moments = [ask for ask in question.asks if isinstance(ask, Moment)]

    for ask in moments:
        result = ask.in_words(question.right[ask.name])
        assert added(ask, question.key["working"][ask.name]) == result
