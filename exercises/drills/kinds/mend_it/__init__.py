"""Mend it: a spoilt edit master, and the recordings that put it right."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.mend_it.question import candidates
from exercises.drills.kinds.mend_it.verdict import grade

MEND_IT = Kind(
    slug="mend-it",
    title="Mend it",
    purpose="A spoilt edit master: choose up to three recordings that put it right.",
    skills=(
        "continuing-a-master",
        "replacing-inside-it",
        "run-up",
        "tracks-and-pulses",
        "mending",
    ),
    lesson="knowing-a-bad-edit",
    revision=4,
    template="drills/kinds/mend_it.html",
    candidates=candidates,
    grade=grade,
)
