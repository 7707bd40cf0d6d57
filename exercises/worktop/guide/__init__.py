"""What a careful editor would do next: the planner's plan from where the master is now, by hand.

The next step is worked out from the worktop alone, so that it is right after any mistake too.
"""

from collections.abc import Iterator

from exercises.tape import NoPlan, Planned, read_edit_session
from exercises.worktop.actions import act
from exercises.worktop.guide.getting_ready import cassettes, levels, lined_up
from exercises.worktop.guide.making import is_black, marks, mode, reason
from exercises.worktop.guide.step import GuidedStep
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import Worktop

__all__ = ["GuidedStep", "guided", "next_step"]

NOTHING_LEFT = "nothing"
LOOK_BACK = GuidedStep(
    name="look-back",
    what="Look back at the edit.",
    why="A bad edit is seen now, while it costs one recording to mend, or never.",
    how="Edit: Look back.",
)
STOP = GuidedStep(
    name="stop",
    arguments={"after": 1},
    what="Stop the recorder.",
    why="It records until somebody stops it, over whatever lies ahead.",
    how="Edit: Stop.",
)
HAND_IN = GuidedStep(
    name="hand-in",
    what="Hand in.",
    why="The edit master holds what the brief asks for, and plays without a fault.",
    how="At the foot of the page: Hand in.",
)


def next_step(top: Worktop) -> GuidedStep | None:
    """None where the brief can't be reached any more."""
    if top.running:
        return STOP
    if not top.looked_back and top.recorder.tape:
        return LOOK_BACK
    planned = first_planned(top)
    if planned is None:
        return None
    if planned == NOTHING_LEFT:
        return HAND_IN
    assert isinstance(planned, Planned)  # noqa: S101 - the other two are returned
    return next(steps_to(top, planned))


def first_planned(top: Worktop) -> Planned | str | None:
    """The first recording of the best way on; NOTHING_LEFT where nothing is left to do."""
    document = top.document
    if "brief" not in document:
        return None
    made = len(document["edits"])
    session = read_edit_session(document | {"brief": document["brief"] | {"after": made}})
    assert session.brief is not None  # noqa: S101 - it was just given
    plan = session.planned(session.brief)
    if isinstance(plan, NoPlan):
        return None
    return plan.recordings[0] if plan.recordings else NOTHING_LEFT


def steps_to(top: Worktop, planned: Planned) -> Iterator[GuidedStep]:
    """What is still to be done for a recording, in order; the last is to record."""
    edit = planned.edit
    tape = top.set_up.by_name[edit.source.name]
    yield from cassettes(top, tape)
    yield from lined_up(top, tape, edit.in_)
    take = tape.take_at(edit.in_)
    if take and not is_black(top, edit):
        yield from levels(top, tape, take)
    yield from mode(top, planned)
    yield from marks(top, planned)
    if not top.rehearsed:
        yield GuidedStep(
            name="rehearse",
            what="Rehearse the edit.",
            why="A rehearsal records nothing, and shows whether both machines lock in time.",
            how="Edit: Rehearse.",
        )
    yield GuidedStep(
        name="record",
        what="Record it.",
        why=reason(top, planned),
        how="Edit: Record.",
    )


def guided(set_up: SetUp) -> Iterator[tuple[GuidedStep, Worktop]]:
    """Every step of the way from nothing, each with the worktop after it."""
    top = Worktop.at_first(set_up)
    while not top.handed_in:
        step = next_step(top)
        if step is None:
            return
        top = act(top, step.name, step.arguments).top
        yield step, top
