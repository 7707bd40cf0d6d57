"""What it all cost, beside the plan."""

from dataclasses import asdict, dataclass

from exercises.drills.asks import Json
from exercises.tape import Plan
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.line import NOTHING_MADE, Judged
from exercises.worktop.worktop import Worktop

# A plan times this, and so much more: one edit to make again, and time to look at every tape.
OVER, MORE_EDITS, MORE_MINUTES = 3 / 2, 1, 3


@dataclass(frozen=True, slots=True)
class Spent:
    """Edits, and minutes at the bench, begun ones counted: made, planned, allowed or None."""

    edits: int
    minutes: int
    plan_edits: int | None = None
    plan_minutes: int | None = None
    most_edits: int | None = None
    most_minutes: int | None = None

    def as_json(self) -> Json:
        return asdict(self)


def spent(run: Proceedings) -> Spent:
    minute = 60 * run.bench.rate.nominal
    made = len(run.made), -(-run.top.clock // minute)
    if not isinstance(run.plan, Plan):
        return Spent(*made)
    planned = run.plan.economy.recordings, run.plan.economy.minutes(run.bench.rate)
    allowed = int(OVER * planned[0]) + MORE_EDITS, int(OVER * planned[1]) + MORE_MINUTES
    return Spent(*made, *planned, *allowed)


def economy(run: Proceedings) -> Judged:
    cost = spent(run)
    if not run.made:
        return NOTHING_MADE
    took = f"You made {_edits(cost.edits)} in {clock_of(run.top)} of bench time"
    if cost.most_edits is None or cost.most_minutes is None:
        return Judged(None, f"{took}; there is no plan to lay beside it.")
    got = cost.edits <= cost.most_edits and cost.minutes <= cost.most_minutes
    plan = f"the plan makes {_edits(cost.plan_edits or 0)} in {_minutes(cost.plan_minutes or 0)}"
    allowed = f"{_edits(cost.most_edits)} and {_minutes(cost.most_minutes)} pass"
    return Judged(got, f"{took}; {plan}, and up to {allowed}.")


def clock_of(top: Worktop) -> str:
    """Minutes and seconds, as the bench shows its clock."""
    minutes, seconds = divmod(top.clock // top.set_up.bench.rate.nominal, 60)
    return f"{minutes}:{seconds:02}"


def _edits(count: int) -> str:
    return f"{count} edit{'' if count == 1 else 's'}"


def _minutes(count: int) -> str:
    return f"{count} minute{'' if count == 1 else 's'}"
