import pytest
from django.template.loader import render_to_string

from exercises.drills.asks import AnswerRefused
from exercises.drills.kinds.free_answer import KIND as FREE_ANSWER
from exercises.drills.kinds.free_answer import LEAST
from exercises.drills.kinds.free_answer.prompts import PROMPTS
from tests.exercises.drills.made import made, many

TEXT = "An assemble wipes the tape past its end. " * 3


def test_every_prompt_is_asked_for_its_skill() -> None:
    questions = many(FREE_ANSWER, 400)

    assert {each.situation for each in questions} == {
        prompt.name.replace(" ", "-") for prompt in PROMPTS
    }
    assert {each.skill for each in questions} == set(FREE_ANSWER.skills)


def test_answer_waits_and_points_at_no_belief() -> None:
    verdict = FREE_ANSWER.grade(made(FREE_ANSWER, 1), {"text": TEXT.strip()})

    assert (verdict.right, verdict.score, verdict.misconceptions) == (False, 0, ())
    assert verdict.pending is True
    assert verdict.feedback["text"] == TEXT.strip()


@pytest.mark.parametrize("text", ["", "x" * (LEAST - 1), "x" * 10_000])
def test_text_out_of_its_limits_is_refused(text: str) -> None:
    with pytest.raises(AnswerRefused, match=r"^That is not one of the answers"):
        FREE_ANSWER.grade(made(FREE_ANSWER, 1), {"text": text})


def test_page_says_that_the_answer_waits_and_shows_no_markup_of_the_writer() -> None:
    text = "<script>alert(1)</script> " + TEXT
    verdict = FREE_ANSWER.grade(made(FREE_ANSWER, 1), {"text": text})
    context = {
        "verdict": verdict,
        "attempt": {"result": {"waits": True}},
        "question_template": f"{FREE_ANSWER.template}#question",
        "feedback_template": f"{FREE_ANSWER.template}#feedback",
        "answers": [("The answer", text)],
    }
    page = render_to_string("practice/answered.html", context)

    assert "Waits for your instructor" in page
    assert "Not right" not in page
    assert "<script>" not in page
