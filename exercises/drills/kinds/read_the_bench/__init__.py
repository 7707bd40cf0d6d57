"""Read the bench: what lamps, meters, switches and leads tell, and what to do then."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.read_the_bench.question import candidates
from exercises.drills.kinds.read_the_bench.verdict import grade

READ_THE_BENCH = Kind(
    slug="read-the-bench",
    title="Read the bench",
    purpose="Lamps, meters, switches, heads and leads: what do they tell you, and what now?",
    skills=(
        "recorder-set-up",
        "picture-level",
        "sound-level",
        "replacing-inside-it",
        "planning-and-time-code",
    ),
    lesson="the-machines",
    revision=4,
    template="drills/kinds/read_the_bench.html",
    candidates=candidates,
    grade=grade,
)
