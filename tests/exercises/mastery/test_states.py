"""How somebody stands in a skill."""

from datetime import UTC, datetime

import pytest

from exercises.mastery.states import Counted, SkillState, State, skill_state

NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)


def standing(
    letters: str, answers: int | None = None, beliefs: dict[int, str] | None = None
) -> SkillState:
    """From answers in the order in which they were given: "wwr" is right at last."""
    given = [
        Counted(
            right=letter == "r",
            score=100 if letter == "r" else 0,
            beliefs=[(beliefs or {})[place]] if place in (beliefs or {}) else [],
        )
        for place, letter in enumerate(letters)
    ]
    last = NOON.replace(day=len(letters))
    return skill_state(given[::-1], len(letters) if answers is None else answers, last)


@pytest.mark.parametrize(
    ("letters", "state"),
    [
        ("w", State.BEGUN),
        ("rr", State.BEGUN),
        ("rwrw", State.BEGUN),
        ("rrr", State.STEADY),
        ("wwwwwrrr", State.STEADY),
        ("rrrw", State.BEGUN),
        ("rrrrw", State.SHAKY),
        ("wwww", State.BEGUN),
        ("wwwww", State.STUCK),
        ("rwwwww", State.STUCK),
        ("wrwwww", State.SHAKY),
        ("rwwwwwr", State.SHAKY),
    ],
)
def test_state_follows_the_last_answers(letters: str, state: State) -> None:
    assert standing(letters).state == state


def test_same_belief_three_times_is_stuck_on_it() -> None:
    found = standing("wrwrw", beliefs={0: "gap-heals", 2: "gap-heals", 4: "gap-heals"})

    assert (found.state, found.belief, found.times) == (State.STUCK, "gap-heals", 3)


def test_two_different_beliefs_are_nothing_to_be_stuck_on() -> None:
    found = standing("wrwrw", beliefs={0: "gap-heals", 2: "gap-heals", 4: "mend-later"})

    assert (found.state, found.belief) == (State.SHAKY, "")


def test_three_right_in_a_row_leave_the_belief_behind() -> None:
    found = standing("wwwrrr", beliefs={0: "gap-heals", 1: "gap-heals", 2: "gap-heals"})

    assert (found.state, found.belief) == (State.STEADY, "")


def test_only_the_last_ten_count() -> None:
    found = standing("w" * 3 + "rw" * 5, beliefs=dict.fromkeys(range(3), "gap-heals"))

    assert (found.state, found.score, found.answers) == (State.SHAKY, 50, 13)


def test_score_answers_and_day_are_told() -> None:
    found = standing("wr", answers=40)

    assert (found.score, found.answers, found.last) == (50, 40, NOON.replace(day=2))


def test_nobody_stands_without_an_answer() -> None:
    with pytest.raises(ValueError, match="without an answer"):
        skill_state([], 0, NOON)
