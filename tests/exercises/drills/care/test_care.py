import pytest

from exercises.drills.believer import believed
from exercises.drills.care import CARE
from exercises.drills.care.climate import KEEPING, OPERATING, STORING, Air, against, clock
from exercises.drills.care.question import SITUATIONS
from exercises.drills.care.verdict import grade
from exercises.mastery.misconceptions import MISCONCEPTIONS


def test_every_situation_occurs() -> None:
    names = {each.__name__.replace("_", "-") for each in SITUATIONS}

    assert {CARE.make(seed).situation for seed in range(400)} == names


@pytest.mark.parametrize("seed", range(60))
def test_feedback_names_source_and_caution_and_why_not(seed: int) -> None:
    question = CARE.make(seed)
    for answer in question.asks[0].every():
        verdict = grade(question, {"reply": answer})
        told = verdict.feedback

        assert all((told["source"], told["caution"], told["why"]))
        assert bool(told["why_not"]) is not verdict.right


@pytest.mark.parametrize(
    ("air", "warmth", "damp", "fault"),
    [
        (OPERATING, 17, 30, ""),
        (OPERATING, 25, 70, ""),
        (OPERATING, 26, 50, "warm"),
        (OPERATING, 16, 50, "cold"),
        (OPERATING, 20, 71, "damp"),
        (OPERATING, 20, 29, "dry"),
        (STORING, 23, 55, ""),
        (STORING, 23, 56, "damp"),
        (KEEPING, 23, 20, ""),
        (KEEPING, 24, 30, "warm"),
    ],
)
def test_limits_of_air_belong_to_it(air: Air, warmth: int, damp: int, fault: str) -> None:
    assert air.fault(warmth, damp) == fault


@pytest.mark.parametrize(("minutes", "text"), [(45, "45 min"), (60, "1 h"), (90, "1 h 30 min")])
def test_minutes_in_words(minutes: int, text: str) -> None:
    assert clock(minutes) == text


@pytest.mark.parametrize(
    ("situation", "belief"),
    [("dead-machine", "recorders-alike"), ("end-of-the-day", "counter-is-time-code")],
)
def test_belief_is_revealed_beside_the_danger(situation: str, belief: str) -> None:
    question = next(each for each in map(CARE.make, range(400)) if each.situation == situation)
    verdict = grade(question, believed(question, {belief}))

    assert verdict.misconceptions == (belief,)
    assert verdict.feedback["beliefs"] == [MISCONCEPTIONS[belief].learner]
    assert verdict.feedback["why_not"]


@pytest.mark.parametrize(
    ("warmth", "damp", "danger"),
    [(30, 50, "Warm"), (10, 50, "Cold"), (20, 80, "Damp")],
)
def test_beginning_all_the_same_is_told_its_danger(warmth: int, damp: int, danger: str) -> None:
    assert against("", warmth, damp).startswith(danger)


@pytest.mark.parametrize("name", ["warm", "cold", "damp"])
def test_needless_waiting_is_told_the_limit(name: str) -> None:
    assert against(name, 20, 50).endswith(" will do.")
