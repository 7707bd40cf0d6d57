"""No drill has a tape played that the course says not to play."""

import re

import pytest

from exercises.drills.kind import Kind, Question
from exercises.drills.register import KINDS
from tests.exercises.drills.skeletons import skeleton
from tests.exercises.drills.test_kinds import texts

# Cold, sun-warmed, wet, badly wound or broken: what lesson 13 says is not played.
UNFIT = re.compile(
    r"\b(cold|frost|frozen|icy|sun|hot|wet|damp|soaked|dew|mouldy?|creased?|crumpled"
    r"|cracked|broken|adhesive|squeal\w*|wound too|loosely|unevenly)\b",
    re.IGNORECASE,
)
# They are about such tapes: what is to be done with one is the question.
ABOUT_THEM = {"care-and-safety", "put-in-order"}
OTHERS = {slug: kind for slug, kind in KINDS.items() if slug not in ABOUT_THEM}


def said(question: Question) -> str:
    """All that is read before the answer, without what the shots show."""
    asked = [ask.as_json() for ask in question.asks]
    return skeleton(" ".join(texts([question.shown, asked])))


@pytest.mark.parametrize("drill", OTHERS.values(), ids=OTHERS)
def test_no_question_plays_a_tape_that_is_not_to_be_played(drill: Kind) -> None:
    found = {word.lower() for seed in range(300) for word in UNFIT.findall(said(drill.make(seed)))}

    assert found == set()


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
