"""Whoever knows nothing answers no better than by chance, whatever rule they go by.

Prints the cue table, kind by kind (`pytest -rP`; `python -m tests.bench.cues` prints it alone).
"""

from itertools import chain

import pytest

from exercises.drills.asks import Amount, Choice, Dial, Json, Moment, Option
from exercises.drills.kind import Kind
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.question import Question
from exercises.drills.register import KINDS
from tests.exercises.drills.cues.part import parts
from tests.exercises.drills.cues.rules import guesses
from tests.exercises.drills.cues.seen import shown
from tests.exercises.drills.cues.table import HEAD, MORE, Line, lines, whole_lines
from tests.exercises.drills.each import EACH_JUDGED
from tests.exercises.drills.made import many

ASKED = 1_000
# The words of a step may tell that it comes first; pairs of steps are tried in `put_in_order`.
NO_CUE = "order: first"


@EACH_JUDGED
def test_no_blind_rule_is_much_better_than_chance(drill: Kind) -> None:
    asked = many(drill, ASKED)
    table = list(lines(drill.slug, asked))
    print(HEAD, *table, sep="\n")

    assert table
    assert [str(line) for line in table if line.is_over and line.part != NO_CUE] == []


@pytest.mark.parametrize("slug", ["care-and-safety", "can-this-bench", "put-in-order"])
def test_not_even_the_luckiest_rule_is_much_better_than_chance(slug: str) -> None:
    """Where some forty situations come again and again."""
    table = list(whole_lines(slug, many(KINDS[slug], ASKED)))
    print(HEAD, *table, sep="\n")

    assert table
    assert [str(line) for line in table if line.gain > MORE and line.part != NO_CUE] == []


def question(ask: Choice | Dial | Moment | Amount, right: object, **key: Json) -> Question:
    return Question(
        situation="told",
        skill="run-up",
        asks=(ask,),
        shown={},
        right={ask.name: right},
        reveals={},
        key=key,
    )


def choice(texts: tuple[str, ...], right: int) -> Question:
    options = tuple(Option(value=str(at), text=text) for at, text in enumerate(texts))
    return question(Choice(name="reply", legend="What?", options=options), str(right))


def turned(texts: tuple[str, ...], times: int) -> tuple[str, ...]:
    at = times % len(texts)
    return texts[at:] + texts[:at]


def only(questions: list[Question]) -> Line:
    (line,) = lines("told", questions)
    return line


@pytest.mark.parametrize(
    ("texts", "rule"),
    [
        (("Wait until it is dry", "Wipe", "Burn", "Glue"), "has “wait”"),
        (("Wait until the whole of it is dry", "Wipe dry", "Dry it", "Dry"), "longest"),
        (("It is 3", "It is 15", "It is 4", "It is 12"), "number 1"),
    ],
)
def test_right_answer_that_is_told_by_its_text_is_found(texts: tuple[str, ...], rule: str) -> None:
    """Wherever it stands."""
    asked = [
        choice(turned(texts, n * n // 3), turned(texts, n * n // 3).index(texts[0]))
        for n in range(200)
    ]
    line = only(asked)

    assert (line.share, line.chance, line.is_over) == (1, 0.25, True)
    assert line.rule


def test_place_that_is_always_right_is_found() -> None:
    texts = ("One", "Two", "Six", "Ten")
    line = only([choice(turned(texts, n * n // 3), 2) for n in range(200)])

    assert (line.share, line.rule) == (1, "place 3")


def test_text_that_is_seldom_shown_is_found() -> None:
    """Where all that are wrong stand in every question."""
    wrong = ("Red lamp", "Blue key", "Grey box")
    texts = [(*wrong[: n % 4], f"Gold c{n}p", *wrong[n % 4 :]) for n in range(200)]
    questions = [choice(each, n % 4) for n, each in enumerate(texts)]
    (line,) = whole_lines("told", questions)
    (part,) = parts(questions[5])

    assert (line.share, line.is_over) == (1, True)
    assert ("count", "rarest", 1.0) in guesses(part, shown(list(chain(*map(parts, questions)))))


def test_value_that_is_always_right_is_found() -> None:
    ask = Amount(name="turn", legend="How far?", unit="dB")
    line = only([question(ask, 9 if n % 7 else n) for n in range(200)])

    assert line.rule == "always 9 dB"
    assert line.is_over


def test_position_that_is_always_right_is_found() -> None:
    dial = Dial(name="level", legend="Where?", positions=tuple(map(str, range(20))), start=3)
    aim = Aim(values=tuple(range(20)), aim=12, band=0).as_json()
    line = only([question(dial, 12, aim=aim) for _ in range(200)])

    assert (round(line.share, 6), line.rule, line.is_over) == (1, "place 13", True)


def test_answers_that_nothing_tells_are_under_the_line() -> None:
    texts = ("Red lamp", "Blue key", "Grey box", "Gold cup")
    line = only([choice(texts, n * 7 // 3 % 4) for n in range(400)])

    assert line.gain <= MORE
