"""Enough run-up? A shot log, and which of its shots can't be edited as they stand there."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.enough_run_up.question import candidates
from exercises.drills.kinds.enough_run_up.verdict import grade

ENOUGH_RUN_UP = Kind(
    slug="enough-run-up",
    title="Enough run-up?",
    purpose="A shot log before the edit: find the shots that can’t be edited as they are.",
    skills=("run-up",),
    lesson="run-up",
    revision=4,
    template="drills/kinds/enough_run_up.html",
    candidates=candidates,
    grade=grade,
)
