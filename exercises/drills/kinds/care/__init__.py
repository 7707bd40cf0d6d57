"""Care and safety: people first, then machines and tape."""

from exercises.drills.care.question import candidates
from exercises.drills.care.verdict import grade
from exercises.drills.kind import Kind

CARE = Kind(
    slug="care-and-safety",
    title="Care and safety",
    purpose="Cold, damp, magnets, mains, lifting, a stuck tape: what do you do?",
    skills=("care-and-safety",),
    lesson="finishing",
    revision=4,
    template="drills/reply.html",
    candidates=candidates,
    grade=grade,
)
