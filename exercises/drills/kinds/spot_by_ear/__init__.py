"""Spot it by ear: a clip across an edit. Which fault, or none?"""

from exercises.drills.judging.spotted import grade
from exercises.drills.kind import Kind
from exercises.drills.kinds.spot_by_ear.question import candidates

SPOT_BY_EAR = Kind(
    slug="spot-by-ear",
    title="Spot it by ear",
    purpose="The sound across a cut in the film: what is wrong with it?",
    skills=("hearing-a-bad-edit",),
    lesson="knowing-a-bad-edit",
    revision=3,
    template="drills/judging/spotted.html",
    candidates=candidates,
    grade=grade,
)
