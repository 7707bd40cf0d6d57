"""Watch it drift: takes in rehearsal; at which must tracking be touched first?"""

from exercises.drills.kind import Kind
from exercises.drills.kinds.watch_it_drift.question import candidates
from exercises.drills.kinds.watch_it_drift.verdict import grade

WATCH_IT_DRIFT = Kind(
    slug="watch-it-drift",
    title="Watch it drift",
    purpose="Takes in rehearsal, one after another: which is the first that asks for tracking?",
    skills=("player-set-up",),
    lesson="setting-up-the-player",
    revision=2,
    template="drills/kinds/watch_it_drift.html",
    candidates=candidates,
    grade=grade,
)
