"""Spot it by ear: a clip across an edit. Which fault, or none?"""

from exercises.drills.kind import Kind
from exercises.drills.spot_by_ear.question import candidates
from exercises.drills.spotted import grade

SPOT_BY_EAR = Kind(
    slug="spot-by-ear",
    title="Spot it by ear",
    purpose="The sound across a cut in the film: what is wrong with it?",
    skills=("hearing-a-bad-edit",),
    lesson="knowing-a-bad-edit",
    revision=3,
    template="drills/spotted.html",
    candidates=candidates,
    grade=grade,
)
