import pytest

from exercises.mastery.progress import is_held, mean_score, row_after, row_words, unbroken


@pytest.mark.parametrize(
    ("rights", "row", "held"),
    [
        ([], 0, False),
        ([True, True], 2, False),
        ([True, False, True, True], 1, False),
        ([False, True, True, True], 0, True),
        ([True, True, True], 3, True),
    ],
)
def test_three_right_without_a_miss_hold(rights: list[bool], row: int, held: bool) -> None:
    assert (unbroken(rights), is_held(rights)) == (row, held)


@pytest.mark.parametrize(
    ("rights", "row", "words"),
    [
        ([True], 1, "Not held yet: 1 right without a miss, 2 to go."),
        ([True, False], 0, "Not held yet: it takes three right answers without a miss."),
        ([False, True, True, True], 3, "Held: three right answers without a miss."),
        ([True, True, True, False], 3, ""),
    ],
)
def test_row_grows_until_the_drill_is_held(rights: list[bool], row: int, words: str) -> None:
    before = now = 0
    for right in rights:
        before, now = now, row_after(now, right=right)

    assert (now, row_words(before, right=rights[-1])) == (row, words)


@pytest.mark.parametrize(("scores", "mean"), [([100], 100), ([0, 33], 17), ([100, 0, 0], 33)])
def test_mean_score_rounds_half_up(scores: list[int], mean: int) -> None:
    assert mean_score(scores) == mean
