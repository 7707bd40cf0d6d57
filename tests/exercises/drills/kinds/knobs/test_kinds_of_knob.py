"""The controls: the best position differs by seed, and the model's own copy agrees with it."""

import pytest

from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from tests.exercises.drills.made import made, many

EACH_KNOB = pytest.mark.parametrize(
    "knob", [kind for slug, kind in KINDS.items() if slug.startswith("set-")], ids=lambda k: k.slug
)


def dial_of(knob: Kind) -> str:
    return next(part.name for part in made(knob, 0).asks if part.form == "dial")


@EACH_KNOB
def test_best_position_differs_by_seed(knob: Kind) -> None:
    name = dial_of(knob)
    best = {question.right[name] for question in many(knob, 60)}

    assert len(best) >= 15


@EACH_KNOB
def test_best_position_gets_full_marks_and_the_far_end_none(knob: Kind) -> None:
    name = dial_of(knob)
    for seed in range(30):
        question = made(knob, seed)
        best = question.right[name]
        far = 0 if best > 20 else 40
        wrong = knob.grade(question, dict(question.right) | {name: far})

        assert knob.grade(question, question.right).score == 100
        assert (wrong.right, wrong.score <= 100 * (1 - 1 / len(question.asks))) == (False, True)


@EACH_KNOB
def test_best_position_makes_a_copy_without_a_fault(knob: Kind) -> None:
    """The tape model itself finds nothing on a copy made with the best setting."""
    for seed in range(30):
        question = made(knob, seed)
        happened = knob.grade(question, question.right).feedback["happened"]

        assert happened == ["The copy has no fault."]


def test_control_does_not_start_where_it_belongs() -> None:
    for knob in (kind for slug, kind in KINDS.items() if slug.startswith("set-")):
        name = dial_of(knob)
        for seed in range(30):
            question = made(knob, seed)
            started = knob.grade(question, dict(question.right) | {name: question.key["start"]})

            assert not started.right


def test_rule_ends_with_the_control_that_was_to_be_turned() -> None:
    for question in many(KINDS["set-skew"], 30):
        assert question.rule
        text = question.rule["text"].lower()
        last = max(("tracking", "skew"), key=text.rindex)

        assert last == question.right["control"]
