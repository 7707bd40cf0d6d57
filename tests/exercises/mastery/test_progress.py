import pytest

from exercises.mastery.progress import in_a_row, is_complete, mean_score


@pytest.mark.parametrize(
    ("rights", "row", "complete"),
    [
        ([], 0, False),
        ([True, True], 2, False),
        ([True, False, True, True], 1, False),
        ([False, True, True, True], 0, True),
        ([True, True, True], 3, True),
    ],
)
def test_three_right_in_a_row_complete(rights: list[bool], row: int, complete: bool) -> None:
    assert (in_a_row(rights), is_complete(rights)) == (row, complete)


@pytest.mark.parametrize(("scores", "mean"), [([100], 100), ([0, 33], 17), ([100, 0, 0], 33)])
def test_mean_score_rounds_half_up(scores: list[int], mean: int) -> None:
    assert mean_score(scores) == mean
