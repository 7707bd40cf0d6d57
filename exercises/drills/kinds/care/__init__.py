"""Care and safety: people first, then machines and tape."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.care.question import candidates
from exercises.drills.kinds.care.verdict import grade

CARE = Kind(
    slug="care-and-safety",
    title="Care and safety",
    purpose="Cold, damp, magnets, mains, lifting, a stuck tape: what do you do?",
    skills=("care-and-safety",),
    lesson="finishing",
    revision=4,
    template="drills/judging/reply.html",
    candidates=candidates,
    grade=grade,
)
