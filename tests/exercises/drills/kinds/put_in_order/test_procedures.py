import json

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.judging.rules import RUN_UP
from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from exercises.drills.kinds.put_in_order.job import made
from exercises.drills.kinds.put_in_order.procedure import Before, Procedure
from exercises.drills.kinds.put_in_order.procedures import EDITS, STANDING
from exercises.drills.kinds.put_in_order.six_steps import SIX
from exercises.drills.setting.draw import Draw

ENOUGH = 40
DRAWS = 2
OF_EDITS = [made(*edit, Draw(seed)) for edit in EDITS for seed in range(DRAWS)]
PROCEDURES = [*OF_EDITS, *(each.made(Draw(seed)) for each in STANDING for seed in range(DRAWS))]
EACH = pytest.mark.parametrize("procedure", PROCEDURES, ids=lambda each: each.name)

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


def test_there_are_enough_situations() -> None:
    """Each with a task and steps of its own."""
    by_name = {procedure.name: procedure for procedure in PROCEDURES}.values()
    asked = {PUT_IN_ORDER.make(seed).situation for seed in range(1_000)}

    assert len({procedure.task for procedure in by_name}) == len(by_name)
    assert len(asked) >= ENOUGH
    assert len({frozenset(procedure.steps.values()) for procedure in by_name}) >= ENOUGH


@pytest.mark.parametrize("procedure", OF_EDITS, ids=lambda each: each.name)
def test_edit_has_the_six_steps_of_lesson_nine(procedure: Procedure) -> None:
    assert [step for step in procedure.order if step in SIX] == list(SIX)


@EACH
def test_there_are_decoys_and_each_has_a_reason(procedure: Procedure) -> None:
    texts = list(procedure.texts.values())

    assert 1 <= len(procedure.decoys) <= 3
    assert len(set(texts)) == len(texts)
    assert all(why and not why.endswith(".") for _, why in procedure.decoys.values())


@EACH
def test_every_step_has_a_reason_not_to_leave_it_out(procedure: Procedure) -> None:
    assert [step for step in procedure.steps if not procedure.why_not_without(step)] == []


@EACH
def test_procedure_is_kept_with_its_question(procedure: Procedure) -> None:
    assert Procedure.from_json(json.loads(json.dumps(procedure.as_json()))) == procedure


@EACH
def test_tape_that_must_rest_rests_before_it_goes_in(procedure: Procedure) -> None:
    if "rest" in procedure.steps:
        into = next(step for step in procedure.order if step in ("in", "hands"))

        assert ("rest", into) in procedure.precedes()
        assert procedure.is_critical("rest")


@EACH
def test_order_of_a_procedure_breaks_none_of_its_rules(procedure: Procedure) -> None:
    assert procedure.broken(procedure.order) == []
    assert (procedure.score(procedure.order), procedure.shown_by(procedure.order)) == (100, [])


@EACH
def test_rules_are_about_steps_and_decoys_are_not_steps(procedure: Procedure) -> None:
    named = {step for rule in procedure.rules for step in (rule.first, rule.then)}

    assert named - set(procedure.steps) == set(procedure.decoys) & set(procedure.steps) == set()


@EACH
def test_rules_go_round_in_no_circle(procedure: Procedure) -> None:
    assert [pair for pair in procedure.precedes() if pair[0] == pair[1]] == []


@EACH
def test_believers_order_shows_the_beliefs_and_no_others(procedure: Procedure) -> None:
    held = [flaw.belief for flaw in procedure.flaws]

    shown = {subset: procedure.shown_by(procedure.believed(subset)) for subset in subsets(held)}

    assert shown == {subset: list(subset) for subset in subsets(held)}


@EACH
def test_score_is_right_for_right_orders_alone(procedure: Procedure) -> None:
    draw = Draw(7)
    for _ in range(200):
        order = draw.shuffled([*procedure.steps, *procedure.decoys])[: draw.whole(3, 9)]
        faultless = not (
            procedure.broken(order) or procedure.missing(order) or procedure.needless(order)
        )

        assert (procedure.score(order) == 100) is faultless
        assert 0 <= procedure.score(order) <= 100


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
