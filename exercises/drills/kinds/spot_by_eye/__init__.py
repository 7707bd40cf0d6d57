"""Spot it by eye: a picture, a pair or a short motion. Which fault, where, or none?"""

from exercises.drills.judging.spotted import grade
from exercises.drills.kind import Kind
from exercises.drills.kinds.spot_by_eye.question import candidates

SPOT_BY_EYE = Kind(
    slug="spot-by-eye",
    title="Spot it by eye",
    purpose="A picture from the edit master, or a few on either side of a cut: what is wrong?",
    skills=("seeing-a-bad-edit",),
    lesson="knowing-a-bad-edit",
    revision=4,
    template="drills/judging/spotted.html",
    candidates=candidates,
    grade=grade,
)
