"""No drill has a tape played that the course says not to play."""

import re
from collections.abc import Sequence

import pytest

from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS
from tests.believers import touched
from tests.exercises.drills.each import EACH_KIND
from tests.exercises.drills.made import many
from tests.exercises.drills.skeletons import skeleton
from tests.exercises.drills.test_kinds import texts

# Cold, sun-warmed, wet, badly wound or broken: what lesson 13 says is not played.
UNFIT = re.compile(
    r"\b(cold|frost|frozen|icy|sun|hot|wet|damp|soaked|dew|mouldy?|creased?|crumpled"
    r"|cracked|broken|adhesive|squeal\w*|wound too|loosely|unevenly)\b",
    re.IGNORECASE,
)
# They are about such tapes: what is to be done with one is the question.
ABOUT_THEM = {"care-and-safety", "put-in-order", "read-the-bench"}


def said_before(question: Question) -> str:
    """The story alone."""
    return skeleton(" ".join(texts(question.shown)))


def said(question: Question) -> str:
    """All that is read before the answer, without what the shots show."""
    asked = [ask.as_json() for ask in question.asks]
    return skeleton(" ".join(texts([question.shown, asked])))


@EACH_KIND
def test_no_question_plays_a_tape_that_is_not_to_be_played(drill: Kind) -> None:
    """But where such a tape is the question: below."""
    found = {seed: UNFIT.findall(said(each)) for seed, each in enumerate(many(drill, 300))}
    unfit = {seed: words for seed, words in found.items() if words}

    assert unfit == {} or drill.slug in ABOUT_THEM


PLAYED = re.compile(r"(At once|Play|Thread|Put it in|Let it play|Yes)\b")


def test_where_such_a_tape_is_the_question_it_is_not_right_to_play_it() -> None:
    care = many(KINDS["care-and-safety"], 300)
    rights = [
        question.asks[0].in_words(question.right["reply"])
        for question in care
        if UNFIT.search(said_before(question)) or "any-tape-plays" in touched(question)
    ]

    assert len(rights) > 50
    assert [text for text in rights if PLAYED.match(text)] == []


def test_whose_dew_lamp_is_lit_is_stopped_and_not_touched() -> None:
    lit = [
        question
        for question in many(KINDS["read-the-bench"], 600)
        if ["Dew", "lit"] in question.shown.get("facts", [])
    ]

    assert len(lit) > 10
    for question in lit:
        assert question.asks[0].in_words(question.right["reply"]).startswith("Stop, touch nothing")


def test_order_of_work_puts_such_a_tape_into_no_machine() -> None:
    orders = [
        question.right["order"]
        for question in many(KINDS["put-in-order"], 300)
        if UNFIT.search(said_before(question))
    ]

    assert len(orders) > 20
    assert all(order.index("rest") < order.index(into(order)) for order in orders)


def into(order: Sequence[str]) -> str:
    """The step that puts a tape into a machine."""
    return next(step for step in order if step in ("hands", "in"))


@pytest.mark.parametrize(
    "story",
    [
        "Tape 3 came by post and is still cold.",
        "Tape 3 was wound too tight.",
        "Tape 3 has lain in the sun.",
        "Tape 3 got wet.",
    ],
)
def test_such_a_story_would_be_found(story: str) -> None:
    assert UNFIT.search(story)
