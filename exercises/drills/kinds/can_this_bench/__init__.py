"""Can this bench do it? What two machines can do, how, or what to propose instead."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.can_this_bench.question import candidates
from exercises.drills.kinds.can_this_bench.verdict import grade

CAN_THIS_BENCH = Kind(
    slug="can-this-bench",
    title="Can this bench do it?",
    purpose="An effect is asked for: can it be done, how, or what do you propose instead?",
    skills=(
        "what-the-bench-cant-do",
        "replacing-inside-it",
        "tracks-and-pulses",
        "continuing-a-master",
        "player-set-up",
        "recorder-set-up",
        "what-a-copy-is",
    ),
    lesson="what-this-bench-cannot-do",
    revision=7,
    template="drills/judging/reply.html",
    candidates=candidates,
    grade=grade,
)
