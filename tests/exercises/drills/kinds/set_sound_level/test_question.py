"""Set the sound level: two takes are two settings, and what any help comes to is the model’s."""

import pytest

from exercises.drills.kinds.knobs.copy import Copy
from exercises.drills.kinds.set_sound_level import KIND as SET_SOUND_LEVEL
from exercises.drills.kinds.set_sound_level import grade
from exercises.drills.kinds.set_sound_level.outcomes import (
    LEGENDS,
    SettingWay,
    SoundOutcome,
    outcome,
    setting,
)
from exercises.drills.question import Question
from tests.exercises.drills.made import many

SEEDS = range(400)


def questions() -> list[Question]:
    return many(SET_SOUND_LEVEL, len(SEEDS))


def of(way: SettingWay) -> list[Question]:
    return [each for each in questions() if each.situation.startswith(way.value)]


def copied(question: Question, way: SettingWay) -> Copy:
    """The copy that the other question asks about."""
    at = question.right["gain"] if way is SettingWay.SET else question.key["start"]
    gain = question.key["makings"][at]["sound_level"]["gain"]
    return Copy(question.key["session"], setting(way.mode, gain))


@pytest.mark.parametrize("way", SettingWay)
def test_outcome_is_what_the_tape_model_finds(way: SettingWay) -> None:
    for question in of(way)[:30]:
        assert question.asks[0].legend == LEGENDS[way]
        assert outcome(copied(question, way)) == question.right["outcome"]


def test_automatic_gain_always_lifts_the_room() -> None:
    assert {each.right["outcome"] for each in of(SettingWay.AUTOMATIC)} == {SoundOutcome.SWELLS}


def test_limiter_over_a_level_that_is_right_does_no_harm() -> None:
    assert {each.right["outcome"] for each in of(SettingWay.SET)} == {SoundOutcome.WELL}
    assert [copied(each, SettingWay.SET).faults() for each in of(SettingWay.SET)[:30]] == [[]] * 30


def test_takes_lie_further_apart_than_goes_unnoticed() -> None:
    """2 to 3 dB is what is noticed in ordinary material (Master Handbook of Acoustics)."""
    for question in questions():
        away = abs(question.right["gain"] - question.key["start"]) / 2

        assert 4.5 <= away <= 9.5


def test_control_left_for_the_second_take_is_a_belief() -> None:
    for question in questions()[:200]:
        verdict = grade(question, {**question.right, "gain": question.key["start"]})

        assert (verdict.right, verdict.misconceptions) == (False, ("one-level-for-all",))


@pytest.mark.parametrize(
    ("way", "expected", "belief"),
    [
        (SettingWay.AUTOMATIC, SoundOutcome.WELL, "agc-evens-out"),
        (SettingWay.LIMITED, SoundOutcome.SWELLS, "limiter-is-agc"),
        (SettingWay.SET, SoundOutcome.SWELLS, "limiter-is-agc"),
        (SettingWay.LEFT, SoundOutcome.WELL, "one-level-for-all"),
    ],
)
def test_outcome_that_a_believer_expects_points_at_the_belief(
    way: SettingWay, expected: SoundOutcome, belief: str
) -> None:
    for question in of(way)[:30]:
        verdict = grade(question, {**question.right, "outcome": expected.value})

        assert verdict.misconceptions == (belief,)
