import json
from functools import cache

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.judging.rules import RUN_UP
from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from exercises.drills.kinds.put_in_order.job import made
from exercises.drills.kinds.put_in_order.procedure import Before, Procedure
from exercises.drills.kinds.put_in_order.procedures import EDITS, STANDING
from exercises.drills.kinds.put_in_order.six_steps import SIX
from exercises.drills.setting.draw import Draw
from tests.exercises.drills.made import many

ENOUGH = 40
DRAWS = 2

CHAIN = Procedure(
    name="count",
    task="Count.",
    steps={"one": "One", "two": "Two", "three": "Three", "four": "Four"},
    rules=(
        Before("one", "two", "So it is."),
        Before("two", "three", "So it is.", critical=True),
    ),
    flaws=(),
    rule=RUN_UP,
    decoys={"zero": ("Nought", "nobody counts from nought")},
)


@cache
def of_edits() -> list[Procedure]:
    return [made(*edit, Draw(seed)) for edit in EDITS for seed in range(DRAWS)]


@cache
def procedures() -> list[Procedure]:
    return [*of_edits(), *(each.made(Draw(seed)) for each in STANDING for seed in range(DRAWS))]


def test_there_are_enough_situations() -> None:
    """Each with a task and steps of its own."""
    by_name = {procedure.name: procedure for procedure in procedures()}.values()
    asked = {question.situation for question in many(PUT_IN_ORDER, 1_000)}

    assert len({procedure.task for procedure in by_name}) == len(by_name)
    assert len(asked) >= ENOUGH
    assert len({frozenset(procedure.steps.values()) for procedure in by_name}) >= ENOUGH


def test_edit_has_the_six_steps_of_lesson_nine() -> None:
    for procedure in of_edits():
        assert [step for step in procedure.order if step in SIX] == list(SIX), procedure.name


def test_there_are_decoys_and_each_has_a_reason() -> None:
    for procedure in procedures():
        texts = list(procedure.texts.values())
        reasons = [why for _, why in procedure.decoys.values()]

        assert 1 <= len(procedure.decoys) <= 3, procedure.name
        assert len(set(texts)) == len(texts), procedure.name
        assert all(why and not why.endswith(".") for why in reasons), procedure.name


def test_every_step_has_a_reason_not_to_leave_it_out() -> None:
    assert [
        (procedure.name, step)
        for procedure in procedures()
        for step in procedure.steps
        if not procedure.why_not_without(step)
    ] == []


def test_procedure_is_kept_with_its_question() -> None:
    for procedure in procedures():
        kept = json.loads(json.dumps(procedure.as_json()))

        assert Procedure.from_json(kept) == procedure, procedure.name


def test_tape_that_must_rest_rests_before_it_goes_in() -> None:
    resting = [procedure for procedure in procedures() if "rest" in procedure.steps]

    assert resting
    for procedure in resting:
        into = next(step for step in procedure.order if step in ("in", "hands"))

        assert ("rest", into) in procedure.precedes(), procedure.name
        assert procedure.is_critical("rest"), procedure.name


def test_order_of_a_procedure_breaks_none_of_its_rules() -> None:
    for procedure in procedures():
        order = procedure.order
        told = (procedure.broken(order), procedure.score(order), procedure.shown_by(order))

        assert told == ([], 100, []), procedure.name


def test_rules_are_about_steps_and_decoys_are_not_steps() -> None:
    for procedure in procedures():
        steps, decoys = set(procedure.steps), set(procedure.decoys)
        named = {step for rule in procedure.rules for step in (rule.first, rule.then)}

        assert named - steps == decoys & steps == set(), procedure.name


def test_rules_go_round_in_no_circle() -> None:
    for procedure in procedures():
        assert [one for one, then in procedure.precedes() if one == then] == [], procedure.name


def test_believers_order_shows_the_beliefs_and_no_others() -> None:
    for procedure in procedures():
        held = subsets([flaw.belief for flaw in procedure.flaws])
        shown = {subset: procedure.shown_by(procedure.believed(subset)) for subset in held}

        assert shown == {subset: list(subset) for subset in held}, procedure.name


def test_score_is_right_for_right_orders_alone() -> None:
    for procedure in procedures():
        draw = Draw(7)
        for _ in range(200):
            order = draw.shuffled([*procedure.steps, *procedure.decoys])[: draw.whole(3, 9)]
            faultless = not (
                procedure.broken(order) or procedure.missing(order) or procedure.needless(order)
            )

            assert (procedure.score(order) == 100) is faultless, (procedure.name, order)
            assert 0 <= procedure.score(order) <= 100, (procedure.name, order)


@pytest.mark.parametrize(
    ("order", "score", "moved"),
    [
        (["one", "two", "three", "four"], 100, []),
        (["four", "one", "two", "three"], 100, []),
        (["two", "one", "three", "four"], 86, ["two"]),
        (["one", "three", "two", "four"], 0, ["three"]),
        (["one", "two", "three", "zero", "four"], 86, []),
        (["one", "two", "three"], 86, []),
        (["two", "three", "four"], 71, []),
        (["one", "three", "four"], 0, []),
    ],
)
def test_partial_credit(order: list[str], score: int, moved: list[str]) -> None:
    assert (CHAIN.score(order), CHAIN.out_of_place(order)) == (score, moved)
