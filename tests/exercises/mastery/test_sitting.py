"""Which drill comes next in a sitting."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.drills.register import KINDS
from exercises.mastery.sitting import LOOK_ALIKES, Candidate, look_alike, next_drill

SLUGS = sorted(KINDS)


def candidates(**rows: int) -> list[Candidate]:
    """`candidates(a=2)`: drill a with two right together behind a miss."""
    return [Candidate(slug=slug, rights=(True,) * row + (False,)) for slug, row in rows.items()]


def test_fewest_right_in_a_row_comes_first() -> None:
    assert next_drill(candidates(a=2, b=0, c=1), []) == "b"


def test_row_counts_from_the_latest_answer_back() -> None:
    behind = Candidate(slug="a", rights=(False, True, True))
    ahead = Candidate(slug="b", rights=(True, False, False))

    assert next_drill([ahead, behind], []) == "a"


def test_drill_asked_least_in_the_set_breaks_the_tie() -> None:
    assert next_drill(candidates(a=0, b=0, c=0), ["a", "b", "a"]) == "c"


def test_look_alike_of_the_last_question_breaks_the_next_tie() -> None:
    found = candidates(**{"sums-on-the-clock": 0, "spot-by-ear": 0, "spot-by-eye": 0})

    assert next_drill(found, ["spot-by-eye"]) == "spot-by-ear"


def test_same_drill_comes_twice_running_only_where_it_is_alone() -> None:
    assert next_drill(candidates(a=0, b=3), ["a"]) == "b"
    assert next_drill(candidates(a=0), ["a"]) == "a"


def test_nothing_to_choose_from_is_refused() -> None:
    with pytest.raises(ValueError, match="no drill"):
        next_drill([], [])


def test_look_alikes_are_drills_of_the_register() -> None:
    assert {slug for group in LOOK_ALIKES for slug in group} <= set(KINDS)


def test_no_drill_looks_like_itself() -> None:
    assert not any(look_alike(slug, slug) for slug in SLUGS)


@given(st.lists(st.sampled_from(SLUGS), unique=True, min_size=2), st.integers(1, 20))
def test_a_set_of_wrong_answers_asks_every_drill_alike(slugs: list[str], length: int) -> None:
    found = [Candidate(slug=slug) for slug in slugs]
    taken: list[str] = []
    for _ in range(length):
        taken.append(next_drill(found, taken))

    counts = [taken.count(slug) for slug in slugs]
    assert max(counts) - min(counts) <= 1
    assert all(one != other for one, other in pairwise(taken))
