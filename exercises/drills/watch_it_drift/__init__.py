"""Watch it drift: a minute of tape in steps; when must tracking be touched again?"""

from exercises.drills.kind import Kind
from exercises.drills.watch_it_drift.question import candidates
from exercises.drills.watch_it_drift.verdict import grade

WATCH_IT_DRIFT = Kind(
    slug="watch-it-drift",
    title="Watch it drift",
    purpose="A minute of a copy, step by step: when must tracking be touched again, if at all?",
    skills=("player-set-up",),
    lesson="setting-up-the-player",
    revision=1,
    template="drills/watch_it_drift.html",
    candidates=candidates,
    grade=grade,
)
