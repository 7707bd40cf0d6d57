"""Sums on the clock, worked again with OpenTimelineIO (SMPTE ST 12-1, EBU 25-frame code)."""

from opentimelineio.opentime import RationalTime, from_timecode, to_timecode

from exercises.drills.asks import Moment
from exercises.drills.kinds.sums_on_the_clock import KIND as SUMS
from tests.exercises.drills.made import many

RATES = {"29.97": 30000 / 1001, "25": 25}


def added(ask: Moment, lines: list[dict[str, str]]) -> str:
    rate = RATES[ask.rate]
    frames = sum(
        (-1 if line["sign"] == "−" else 1) * from_timecode(line["value"], rate).value
        for line in lines
    )
    return str(to_timecode(RationalTime(frames, rate), rate, ask.drop))


def test_working_comes_to_the_result() -> None:
    """OpenTimelineIO, on SMPTE ST 12-1 and EBU 25-frame code."""
    for seed, question in enumerate(many(SUMS, 300)):
        for ask in question.asks:
            if isinstance(ask, Moment):
                result = ask.in_words(question.right[ask.name])
                assert added(ask, question.key["working"][ask.name]) == result, seed
