"""Choose the mode: which recording makes a wanted change, if any does?"""

from exercises.drills.kind import Kind
from exercises.drills.kinds.choose_mode.question import candidates
from exercises.drills.kinds.choose_mode.verdict import grade

CHOOSE_MODE = Kind(
    slug="choose-the-mode",
    title="Choose the mode",
    purpose="An edit master and a wanted change: assemble, insert, or is it impossible here?",
    skills=(
        "continuing-a-master",
        "replacing-inside-it",
        "tracks-and-pulses",
        "run-up",
        "what-the-bench-cant-do",
    ),
    lesson="assemble-and-insert",
    revision=4,
    template="drills/kinds/choose_mode.html",
    candidates=candidates,
    grade=grade,
)
