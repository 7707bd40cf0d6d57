"""Spot the bad edit, from a description: which fault, which edit, what now?"""

from exercises.drills.kind import Kind
from exercises.drills.kinds.spot_described.question import candidates
from exercises.drills.kinds.spot_described.verdict import grade

SPOT_DESCRIBED = Kind(
    slug="spot-the-bad-edit",
    title="Spot the bad edit",
    purpose="What was done, and what is seen and heard: which fault, which edit, what now?",
    skills=("continuing-a-master", "replacing-inside-it", "tracks-and-pulses", "run-up"),
    lesson="knowing-a-bad-edit",
    revision=7,
    template="drills/kinds/spot_described.html",
    candidates=candidates,
    grade=grade,
)
