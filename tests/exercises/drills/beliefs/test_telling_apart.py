"""What a question keeps of the answers of believers: which sets may answer alike, which not."""

import pytest

from exercises.drills.asks import Json
from exercises.drills.beliefs.including import INCLUDES, goes_without_saying
from exercises.drills.beliefs.telling_apart import believed, explained, told_apart
from exercises.drills.question import Question
from exercises.drills.register import KINDS
from exercises.mastery.misconceptions import MISCONCEPTIONS
from tests import believers
from tests.believers import touched
from tests.exercises.drills.made import many

SEEDS = 300
ENOUGH = SEEDS // 40  # questions of the kind that shows a belief most often
MORE, LESS = "no-source-run-up", "touching-takes-share-pulses"

# Beliefs, and kinds that show them.
SHOWN = {
    "touching-takes-share-pulses": ("enough-run-up", "what-will-play", "sums-on-the-clock"),
    "pre-roll-makes-run-up": ("enough-run-up", "what-will-play", "sums-on-the-clock"),
    "out-is-last-frame": ("enough-run-up", "sums-on-the-clock"),
    "black-is-blank": ("what-will-play", "enough-run-up", "sums-on-the-clock"),
    "insert-takes-both": ("what-will-play", "choose-the-mode"),
    "late-is-safer": ("what-will-play", "sums-on-the-clock"),
    "level-is-seen-later": ("levels-on-paper", "put-in-order"),
    "bars-are-alike": ("set-picture-level", "levels-on-paper"),
    "monitor-is-a-meter": ("set-picture-level", "levels-on-paper"),
    "one-level-for-all": ("set-sound-level", "levels-on-paper"),
    "agc-evens-out": ("set-sound-level", "levels-on-paper", "spot-by-ear"),
    "limiter-is-agc": ("set-sound-level", "levels-on-paper"),
}


def questions(slug: str) -> list[Question]:
    return many(KINDS[slug], SEEDS)


def places(beliefs: frozenset[str]) -> Json:
    """An earliest edit in: a take, another that touches it, and who counts what as run-up."""
    return {"in": 100 if MORE in beliefs else 150 if LESS in beliefs else 250}


def test_who_goes_further_answers_for_both() -> None:
    kept = told_apart((MORE, LESS), places)

    assert kept is not None
    assert [given["in"] for _, given in kept] == [250, 100, 150, 100]
    assert believed(kept, {MORE, LESS}) == {"in": 100}
    assert explained(kept, {"in": 100}) == (MORE,)


def test_two_beliefs_that_answer_alike_are_not_told_apart() -> None:
    assert told_apart((MORE, LESS), lambda beliefs: {"in": bool(beliefs)}) is None


def test_sets_that_answer_alike_for_no_reason_are_not_told_apart() -> None:
    """Neither of these goes further than the other."""
    others = ("insert-lays-pulses", "assemble-ends-clean")

    assert told_apart(others, lambda beliefs: {"in": min(len(beliefs), 1)}) is None
    assert (
        told_apart(others, lambda beliefs: {"in": 1 if others[0] in beliefs else 2 * len(beliefs)})
        is None
    )


def test_belief_alone_goes_without_saying_beside_no_other() -> None:
    pairs = [(one, other) for one, others in INCLUDES.items() for other in others]

    assert all(goes_without_saying(pair, pair[:1]) for pair in pairs)
    assert not any(goes_without_saying(pair[:1], pair[1:]) for pair in pairs)
    assert {each for pair in pairs for each in pair} <= set(MISCONCEPTIONS)


def test_each_belief_alone_answers_as_no_other() -> None:
    for slug, kind in KINDS.items():
        for seed, question in enumerate(many(kind, 40)):
            alone = [given for held, given in question.believed if len(held) < 2]

            alike = [given for number, given in enumerate(alone) if given in alone[:number]]
            assert alike == [], (slug, seed)


@pytest.mark.parametrize("belief", SHOWN)
def test_belief_is_shown_by_two_kinds_and_by_one_often(belief: str) -> None:
    counts = [
        sum(belief in touched(question) for question in questions(slug)) for slug in SHOWN[belief]
    ]

    assert min(counts) > 0
    assert max(counts) >= ENOUGH


@pytest.mark.parametrize("belief", SHOWN)
def test_believer_answers_otherwise_than_the_key_and_is_found(belief: str) -> None:
    for slug in SHOWN[belief]:
        touching = [each for each in questions(slug) if belief in touched(each)][:10]
        for question in touching:
            answer = believers.believed(question, {belief})

            assert answer != question.right
            assert KINDS[slug].grade(question, answer).misconceptions == (belief,)
