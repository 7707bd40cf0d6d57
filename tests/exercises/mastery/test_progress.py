import pytest

from exercises.mastery.progress import is_held, mean_score, unbroken


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


@pytest.mark.parametrize(("scores", "mean"), [([100], 100), ([0, 33], 17), ([100, 0, 0], 33)])
def test_mean_score_rounds_half_up(scores: list[int], mean: int) -> None:
    assert mean_score(scores) == mean
