"""What is typed into an order, a time code, a number and a text, and what is refused."""

import json
from collections.abc import Sequence

import pytest

from exercises.drills.asks import (
    Amount,
    AnswerRefused,
    Ask,
    FreeText,
    Moment,
    Option,
    Order,
    ask_of_json,
)

STEPS = tuple(Option(value=value, text=f"Step {value}") for value in "abc")
ORDER = Order(name="order", legend="In what order?", steps=STEPS)
PLAIN = Moment(name="code", legend="Where?", rate="25")
DROP = Moment(name="code", legend="Where?", rate="29.97", drop=True)
LEVEL = Amount(name="turn", legend="How far?", unit="dB", least=-20, most=20, signed=True)
TENTHS = Amount(name="noise", legend="How much?", unit="dB", least=0, most=60, decimals=1)
TEXT = FreeText(name="text", legend="Why?", least=10, most=2000, rubric=("It names the rule.",))
ASKS = (ORDER, PLAIN, DROP, LEVEL, TENTHS, TEXT)

READ: list[tuple[Ask, Sequence[str], object]] = [
    (ORDER, ["2", "3", "1"], ["c", "a", "b"]),
    (ORDER, ["3", "0", "1"], ["c", "a"]),
    (PLAIN, ["00:00:10:24"], 274),
    (DROP, ["00:01:00;02"], 1800),
    (LEVEL, ["-6"], -6),
    (LEVEL, ["−6"], -6),
    (LEVEL, ["+3"], 3),
    (TENTHS, ["43,2"], 43.2),
    (TEXT, ["  Two lines\r\nof words. "], "Two lines\nof words."),
]


@pytest.mark.parametrize(("ask", "typed", "answer"), READ)
def test_typed_answer_is_read(ask: Ask, typed: Sequence[str], answer: object) -> None:
    assert ask.read(typed) == answer


LONG = "x" * 10_000
MISSING = "Give every step a position, or leave it out. Nothing has been recorded yet."
REFUSED: list[tuple[Ask, Sequence[str], str]] = [
    (ORDER, [], MISSING),
    (ORDER, ["1", "2"], MISSING),
    (ORDER, ["1", "", "2"], MISSING),
    (ORDER, ["1", "2", "4"], "Give each step a whole number from 1 to 3."),
    (ORDER, ["1", "2", LONG], "Give each step a whole number from 1 to 3."),
    (ORDER, ["1", "2", "²"], "Give each step a whole number from 1 to 3."),
    (ORDER, ["2", "1", "2"], "Two steps stand at position 2. Give each a position of its own."),
    (ORDER, ["0", "0", "0"], "Every step is left out. Give at least one a position."),
    (PLAIN, [], "Give a time code. Nothing has been recorded yet."),
    (PLAIN, [" "], "Give a time code. Nothing has been recorded yet."),
    (
        PLAIN,
        ["00:00:10:25"],
        "00:00:10:25 does not exist: the last label is 23:59:59:24.",
    ),
    (PLAIN, ["ten seconds"], "'ten seconds' is not time code: write HH:MM:SS:FF."),
    (PLAIN, [LONG], f"'{'x' * 40}'… is not time code: write HH:MM:SS:FF."),
    (DROP, ["00:01:00;00"], "00:01:00;00 does not exist: drop-frame code leaves it out."),
    (PLAIN, ["00:00:10;24"], "There is no drop-frame code at 25 frames a second."),
    (DROP, ["00:01:00:02"], "Write a semicolon before the frames, as on this tape."),
    (LEVEL, [], "Give a number. Nothing has been recorded yet."),
    (LEVEL, ["a bit"], "Give a whole number, such as 12."),
    (LEVEL, ["nan"], "Give a whole number, such as 12."),
    (LEVEL, [LONG], "Give a whole number, such as 12."),
    (LEVEL, ["21"], "Give a number from −20 to +20."),
    (LEVEL, ["2.5"], "Give a whole number."),
    (TENTHS, ["2.55"], "Give no more than 1 decimal."),
    (TEXT, [], "Write an answer. Nothing has been recorded yet."),
    (TEXT, ["short"], "Write 10 to 2,000 characters; there are 5."),
    (TEXT, [LONG], "Write 10 to 2,000 characters; there are 10,000."),
]


@pytest.mark.parametrize(("ask", "typed", "sentence"), REFUSED)
def test_bad_input_is_refused_with_a_sentence(
    ask: Ask, typed: Sequence[str], sentence: str
) -> None:
    with pytest.raises(AnswerRefused) as refusal:
        ask.read(typed)

    assert str(refusal.value) == sentence


WORDS: list[tuple[Ask, object, str]] = [
    (ORDER, ["c", "a"], "1. Step c 2. Step a"),
    (PLAIN, 274, "00:00:10:24"),
    (DROP, 1800, "00:01:00;02"),
    (LEVEL, -6, "−6 dB"),
    (LEVEL, 3, "+3 dB"),
    (TENTHS, 43.2, "43.2 dB"),
    (TEXT, "Two lines of words.", "Two lines of words."),
]


@pytest.mark.parametrize(("ask", "answer", "words"), WORDS)
def test_answer_is_told_in_words(ask: Ask, answer: object, words: str) -> None:
    assert ask.in_words(answer) == words


@pytest.mark.parametrize("ask", ASKS)
@pytest.mark.parametrize("answer", ["", None, True, -1e9, ["a", "a"], ["d"], [3], {}])
def test_what_can_not_be_an_answer_is_refused(ask: Ask, answer: object) -> None:
    with pytest.raises(AnswerRefused, match=r"^That is not one of the answers"):
        ask.in_words(answer)


@pytest.mark.parametrize("ask", ASKS)
def test_ask_survives_storing(ask: Ask) -> None:
    assert ask_of_json(json.loads(json.dumps(ask.as_json()))) == ask


@pytest.mark.parametrize("ask", ASKS)
def test_answers_to_try_are_answers(ask: Ask) -> None:
    words = [ask.in_words(answer) for answer in ask.every()]

    assert len(set(words)) == len(words) > 1


def test_typed_positions_stay_with_their_steps() -> None:
    assert ORDER.rows(["2", "x"]) == [(STEPS[0], "2"), (STEPS[1], "x"), (STEPS[2], "")]


@pytest.mark.parametrize("ask", ASKS)
def test_what_is_typed_for_an_answer_is_read_as_that_answer(ask: Ask) -> None:
    for answer in ask.every():
        assert ask.read(ask.typed(answer)) == answer
