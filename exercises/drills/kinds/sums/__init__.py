"""Sums on the clock: lengths, totals, drop-frame code, the counter, room for run-up."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.sums.question import candidates
from exercises.drills.kinds.sums.verdict import grade

SUMS = Kind(
    slug="sums-on-the-clock",
    title="Sums on the clock",
    purpose="Where does it end, how long is it, how much tape does it take?",
    skills=(
        "planning-and-time-code",
        "run-up",
        "replacing-inside-it",
        "continuing-a-master",
        "mending",
        "tracks-and-pulses",
    ),
    lesson="planning",
    revision=4,
    template="drills/kinds/sums.html",
    candidates=candidates,
    grade=grade,
)
