"""Set the picture level: bars by their name, shots by the waveform, whatever the monitor shows."""

import re

import pytest

from exercises.drills.kinds.knobs.verdict import grade
from exercises.drills.kinds.set_picture_level import KIND as SET_PICTURE_LEVEL
from exercises.drills.kinds.set_picture_level.version import DRAWN
from exercises.drills.question import Question
from tests.exercises.drills.made import many

SEEDS = range(240)
# By the card. ITU-R BT.471 names bars; SMPTE EG 1: 76.9 IRE; EBU D 23 and ITU-R BT.1700: 700 mV,
# and three quarters of it. A white bar of 100 % at 525 lines: 100 IRE (SMPTE 170M).
BELONGS = {
    "75/7.5/75/7.5": (76.9, "IRE"),
    "100/7.5/75/7.5": (100, "IRE"),
    "75/0/75/0": (525, "mV"),
    "100/0/75/0": (700, "mV"),
}
BAND = 0.03  # of the level: 2.5 IRE, and half a step of the control


def questions() -> list[Question]:
    return many(SET_PICTURE_LEVEL, len(SEEDS))


def named(question: Question) -> str:
    """The bars that the card of a question names; none where there are no bars."""
    facts = dict(question.shown["facts"])
    found = re.search(r"bars (\S+),", facts.get("On the card", ""))
    return found[1] if found else ""


def reached(question: Question, position: int) -> tuple[float, str]:
    found = re.search(r"(\d+) (IRE|mV)$", question.key["units"][position])
    assert found is not None
    return int(found[1]), found[2]


def test_every_version_and_all_four_bars_occur() -> None:
    assert {each.situation for each in questions()} == {version.name for version in DRAWN}
    assert {named(each) for each in questions()} == {"", *BELONGS}


def test_white_bar_belongs_where_its_name_says() -> None:
    for question in filter(named, questions()):
        level, unit = BELONGS[named(question)]
        stands, told = reached(question, question.right["level"])

        assert told == unit
        assert stands == pytest.approx(level, rel=BAND)


def test_bars_are_not_told_apart_but_by_their_card() -> None:
    told = {
        " ".join([each.shown["story"], each.shown["task"], *dict(each.shown["facts"])])
        for each in filter(named, questions())
    }

    assert [each for each in told if re.search(r"75|100 ?%", each)] == []


def lured(question: Question, belief: str) -> list[int]:
    return [int(at) for at, held in question.reveals["level"].items() if held == [belief]]


def test_white_bar_set_to_a_whole_white_is_a_belief_about_bars() -> None:
    found = [(each, at) for each in questions() for at in lured(each, "bars-are-alike")]

    assert {named(question)[:2] for question, _ in found} == {"75"}
    for question, at in found:
        stands, unit = reached(question, at)

        assert stands == pytest.approx(100 if unit == "IRE" else 700, rel=BAND)
        assert grade(question, {"level": at}).misconceptions == ("bars-are-alike",)


def test_level_set_by_a_monitor_that_stands_off_is_a_belief_about_monitors() -> None:
    found = [(each, at) for each in questions() for at in lured(each, "monitor-is-a-meter")]

    assert {each.situation for each, _ in found} == {"dim-monitor", "bright-monitor"}
    for question, at in found:
        monitor, _ = question.media
        verdict = grade(question, {"level": at})

        assert monitor["words"][at] == "On the monitor, white looks white."
        assert (verdict.right, verdict.misconceptions) == (False, ("monitor-is-a-meter",))
