"""What will play? A session of edits: what each stretch of the edit master plays afterwards."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.what_plays.question import candidates
from exercises.drills.kinds.what_plays.verdict import grade

WHAT_PLAYS = Kind(
    slug="what-will-play",
    title="What will play?",
    purpose="Some edits on an edit master: say, stretch by stretch, what it plays afterwards.",
    skills=("continuing-a-master", "replacing-inside-it", "run-up", "tracks-and-pulses"),
    lesson="assemble-and-insert",
    revision=6,
    template="drills/kinds/what_plays.html",
    candidates=candidates,
    grade=grade,
)
