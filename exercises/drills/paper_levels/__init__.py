"""Levels on paper: how far to turn, and which sound mode to record in."""

from exercises.drills.kind import Kind
from exercises.drills.paper_levels.question import candidates
from exercises.drills.paper_levels.verdict import grade

PAPER_LEVELS = Kind(
    slug="levels-on-paper",
    title="Levels on paper",
    purpose="A meter’s reading: how far to turn the level, by hand or with help?",
    skills=("sound-level", "picture-level"),
    lesson="picture-and-sound-levels",
    revision=2,
    template="drills/paper_levels.html",
    candidates=candidates,
    grade=grade,
)
