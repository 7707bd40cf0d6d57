"""Whoever knows nothing answers no better than by chance, whatever rule they go by.

Prints the cue table, kind by kind (`pytest -rP`; `python -m tests.bench.cues` prints it alone).
"""

import pytest

from exercises.drills.asks import Amount, Choice, Dial, Json, Moment, Option
from exercises.drills.kind import Kind, Question
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from exercises.drills.register import KINDS
from tests.exercises.drills.cues.table import HEAD, MORE, Line, lines

SEEDS = range(1_000)
# What an order gives away is tried with its procedures, in `put_in_order`.
JUDGED = {
    slug: kind for slug, kind in KINDS.items() if not kind.by_hand and slug != PUT_IN_ORDER.slug
}


@pytest.mark.parametrize("drill", JUDGED.values(), ids=JUDGED)
def test_no_blind_rule_is_much_better_than_chance(drill: Kind) -> None:
    table = list(lines(drill.slug, map(drill.make, SEEDS)))
    print(HEAD, *table, sep="\n")

    assert table
    assert [str(line) for line in table if line.is_over] == []


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
