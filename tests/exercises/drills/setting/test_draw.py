import random

from hypothesis import given
from hypothesis import strategies as st

from exercises.drills.setting.draw import Draw


@given(st.integers(0, 2**53), st.integers(-100, 100), st.integers(0, 1000))
def test_whole_number_lies_in_its_range(seed: int, low: int, more: int) -> None:
    draw = Draw(seed)

    assert all(low <= draw.whole(low, low + more) <= low + more for _ in range(20))


def test_every_whole_number_of_a_range_is_drawn() -> None:
    draw = Draw(3)

    assert {draw.whole(2, 5) for _ in range(200)} == {2, 3, 4, 5}


@given(st.integers(0, 2**53), st.lists(st.integers(), unique=True, max_size=20))
def test_shuffled_things_are_the_same_things(seed: int, things: list[int]) -> None:
    assert sorted(Draw(seed).shuffled(things)) == sorted(things)


def test_seed_draws_what_the_promised_method_draws() -> None:
    promised, draw = random.Random(42), Draw(42)

    assert [draw.below(1000) for _ in range(50)] == [
        int(promised.random() * 1000) for _ in range(50)
    ]


def test_chance_holds_about_as_often_as_told() -> None:
    draw = Draw(1)

    assert 250 < sum(draw.chance(0.3) for _ in range(1000)) < 350
