"""A question as it is kept, and one that was kept before its common parts had fields."""

import json

from exercises.drills.question import Question
from exercises.drills.register import KINDS
from exercises.drills.setting.settings import Settings
from tests.exercises.drills.made import made

OWN = Settings.usual()


def test_question_comes_back_as_it_was_kept() -> None:
    for kind in KINDS.values():
        question = made(kind, 3)

        assert Question.from_json(json.loads(json.dumps(question.as_json()))) == question


def test_question_of_an_earlier_version_is_read() -> None:
    """There the key had what every kind has: rule, media, beliefs and the figures of the bench."""
    question = made(KINDS["spot-by-eye"], 3)
    now = json.loads(json.dumps(question.as_json()))
    common = {name: now.pop(name) for name in ("rule", "believed", "media")}
    del now["bench"]
    figures = {"settings": OWN.as_json(), "figures": "a bench"}
    before = {**now, "key": {**now["key"], **common, **figures}}

    read = Question.from_json(before)

    assert (read.rule, read.media, read.key) == (question.rule, question.media, question.key)
    assert read.bench == figures
