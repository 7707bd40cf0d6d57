"""Levels on paper: how far to turn, what comes of a sound, and what to do about a picture."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.paper_levels.question import candidates
from exercises.drills.kinds.paper_levels.verdict import grade, near

PAPER_LEVELS = Kind(
    slug="levels-on-paper",
    title="Levels on paper",
    purpose="A meter’s reading: how far do you turn, what comes of it, and what now?",
    skills=("sound-level", "picture-level"),
    lesson="picture-and-sound-levels",
    revision=4,
    template="drills/kinds/paper_levels.html",
    candidates=candidates,
    grade=grade,
    near=near,
)
