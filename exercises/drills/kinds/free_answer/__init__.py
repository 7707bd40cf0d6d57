"""Free answer: some sentences for the instructor to read."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.free_answer.question import candidates
from exercises.drills.kinds.free_answer.verdict import grade

FREE_ANSWER = Kind(
    slug="free-answer",
    title="In your own words",
    purpose="Explain, propose or hand over: your instructor reads what you write.",
    skills=(
        "replacing-inside-it",
        "tracks-and-pulses",
        "run-up",
        "what-the-bench-cant-do",
        "planning-and-time-code",
        "sound-level",
        "player-set-up",
        "mending",
        "recorder-set-up",
        "what-a-copy-is",
    ),
    lesson="",
    revision=2,
    template="drills/kinds/free_answer.html",
    candidates=candidates,
    grade=grade,
    by_hand=True,
)
