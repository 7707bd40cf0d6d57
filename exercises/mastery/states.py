"""How somebody stands in a skill, in one word, and what they seem to be stuck on.

    not begun   no answer counts yet
    steady      the last three answers are right, as for a drill that is held
    stuck       at least five answers, none of the last five right; or the same belief behind
                three or more of the last ten
    begun       fewer than five answers, and not steady
    shaky       anything else: sometimes right, sometimes not

Steady goes before stuck: who has been right three times without a miss has moved on. The figures
are our own choice; ten answers are about a week of practice in one skill.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from exercises.mastery.progress import HOLDS, RECENT, mean_score, unbroken

# Raise it when the same answers come to something else here, or in
# `exercises/standing/summaries.py`: `manage.py migrate` then works all summaries out again.
RULES = 2

MANY = 5  # answers after which somebody is no beginner in a skill
OFTEN = 3  # times that a belief shows before somebody is stuck on it


class State(StrEnum):
    NOT_BEGUN = "not-begun"
    BEGUN = "begun"
    STUCK = "stuck"
    SHAKY = "shaky"
    STEADY = "steady"


@dataclass(frozen=True, kw_only=True)
class Counted:
    """An answer as it counts; `score` in hundredths."""

    right: bool
    score: int
    beliefs: Sequence[str]


@dataclass(frozen=True, kw_only=True)
class SkillState:
    """How somebody stands in one skill: `score` is the mean of the last `RECENT` answers."""

    state: State
    score: int
    answers: int
    last: datetime
    belief: str = ""
    times: int = 0


def skill_state(latest: Sequence[Counted], answers: int, last: datetime) -> SkillState:
    """From the last answers in a skill, latest first, how many there are, and when the last was.

    ValueError where there is none.
    """
    recent = latest[:RECENT]
    if not recent:
        raise ValueError("Nobody stands anywhere without an answer.")
    belief, times = commonest(recent)
    state = state_of(recent, answers, times)
    stuck = state == State.STUCK and times >= OFTEN
    return SkillState(
        state=state,
        score=mean_score([each.score for each in recent]),
        answers=answers,
        last=last,
        belief=belief if stuck else "",
        times=times if stuck else 0,
    )


def state_of(recent: Sequence[Counted], answers: int, times: int) -> State:
    rights = [each.right for each in recent]
    if unbroken(rights) >= HOLDS:
        return State.STEADY
    if times >= OFTEN or (answers >= MANY and not any(rights[:MANY])):
        return State.STUCK
    return State.BEGUN if answers < MANY else State.SHAKY


def commonest(recent: Sequence[Counted]) -> tuple[str, int]:
    """The belief behind most of these answers, and behind how many; of equals, the first id."""
    seen = Counter(belief for each in recent for belief in set(each.beliefs))
    if not seen:
        return "", 0
    belief = min(seen, key=lambda each: (-seen[each], each))
    return belief, seen[belief]
