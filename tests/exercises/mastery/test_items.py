"""What answers say about the questions, on cases small enough to work out by hand."""

from dataclasses import replace

import pytest

from exercises.mastery.items import (
    ENOUGH,
    Item,
    complete,
    discriminations,
    flags_of,
    kr20,
    point_biserial,
    typical,
    usual_set,
)

PLAIN = Item(
    slug="plain",
    answers=40,
    people=26,  # one standard error is 0.2
    right=0.7,
    first=0.6,
    discrimination=0.5,
    seconds=60,
)


def test_point_biserial_of_a_clean_split_is_one() -> None:
    assert point_biserial([False, False, True, True], [1, 1, 3, 3]) == pytest.approx(1)
    assert point_biserial([True, True, False, False], [1, 1, 3, 3]) == pytest.approx(-1)


def test_point_biserial_by_hand() -> None:
    # Means 2 and 1, spread sqrt(0.5), half of them right: (2 - 1.5) / sqrt(0.75) * 1.
    assert point_biserial([True, True, False, False], [1, 3, 1, 1]) == pytest.approx(0.57735, 1e-5)


@pytest.mark.parametrize(
    ("rights", "scores"), [([True] * 4, [1, 2, 3, 4]), ([True, False] * 2, [2, 2, 2, 2])]
)
def test_point_biserial_without_any_difference_is_none(
    rights: list[bool], scores: list[float]
) -> None:
    assert point_biserial(rights, scores) is None


def test_discrimination_leaves_the_item_out_of_its_rest() -> None:
    # Everybody has one of two right: an item is against its rest, not in step with the sum.
    answers = {n: {"a": n % 2 == 0, "b": n % 2 == 1} for n in range(ENOUGH)}

    found = discriminations(answers)

    assert found == {"a": pytest.approx(-1), "b": pytest.approx(-1)}


def test_discrimination_needs_enough_people_with_another_answer() -> None:
    answers = {n: {"a": n % 2 == 0, "b": n % 2 == 0} for n in range(ENOUGH - 1)}
    alone = answers | {n: {"a": True} for n in range(ENOUGH - 1, 2 * ENOUGH)}
    enough = answers | {ENOUGH: {"a": True, "b": True}}

    assert discriminations(answers) == discriminations(alone) == {"a": None, "b": None}
    assert discriminations(enough) == {"a": pytest.approx(1), "b": pytest.approx(1)}


def test_complete_keeps_those_who_answered_the_whole_set() -> None:
    answers = {1: {"a": True, "b": False, "c": True}, 2: {"a": True}, 3: {"b": True, "a": False}}

    assert complete(["a", "b"], answers) == [[True, False], [False, True]]


def test_usual_set_is_what_enough_people_have_answered_whole() -> None:
    enough = {number: {"a": True, "b": number % 2 == 0, "c": True} for number in range(ENOUGH)}
    more = {ENOUGH: {"b": True}, ENOUGH + 1: {"b": True, "d": False}}
    few = {number: given for number, given in enough.items() if number < ENOUGH - 1}

    assert usual_set("abcde", {**enough, **more}) == ["a", "b", "c"]
    assert usual_set("abcde", {**few, **more}) == ["a", "b", "c"]
    assert usual_set("abcde", {0: {"a": True}, 1: {"a": True, "b": True}, 2: {"d": True}}) == ["a"]
    assert usual_set("abcde", {}) == []


def test_kr20_by_hand() -> None:
    # Sums 2, 1, 0: variance 2/3. Shares 2/3 and 1/3: 2/9 + 2/9. 2 * (1 - (4/9) / (2/3)).
    assert kr20([[True, True], [True, False], [False, False]]) == pytest.approx(2 / 3)


@pytest.mark.parametrize("rows", [[], [[True]], [[True, False], [False, True]]])
def test_kr20_without_any_difference_is_none(rows: list[list[bool]]) -> None:
    assert kr20(rows) is None


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({}, []),
        ({"discrimination": -0.21}, ["The best learners miss this one"]),
        ({"discrimination": -0.19}, ["It hardly tells"]),
        ({"discrimination": 0.01}, []),
        ({"discrimination": None}, []),
        ({"first": 0.95}, ["Nearly everybody"]),
        ({"first": 0.2}, ["Hardly anybody"]),
        ({"commonest": 0.6}, ["Most wrong answers"]),
        ({"seconds": 181}, ["It takes much longer"]),
        ({"first": 0.1, "seconds": 200, "commonest": 0.9, "people": ENOUGH - 1}, []),
    ],
)
def test_flags_give_their_reasons(changed: dict[str, float], words: list[str]) -> None:
    flags = flags_of(replace(PLAIN, **changed), others=60)  # type: ignore[arg-type]

    assert [flag[: len(start)] for flag, start in zip(flags, words, strict=True)] == words


def test_typical_time_of_none_is_nothing() -> None:
    assert (typical([]), typical([3, 1, 8])) == (0, 3)
