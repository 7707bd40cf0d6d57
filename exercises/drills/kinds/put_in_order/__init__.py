"""Put the steps in order: what must come before what, and what does not belong at all."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.put_in_order.question import candidates
from exercises.drills.kinds.put_in_order.verdict import grade, near

PUT_IN_ORDER = Kind(
    slug="put-in-order",
    title="Put the steps in order",
    purpose="Set up, edit, lay a leader, end a session: what comes first, what is left out?",
    skills=(
        "care-and-safety",
        "player-set-up",
        "recorder-set-up",
        "picture-level",
        "sound-level",
        "run-up",
        "tracks-and-pulses",
        "mending",
        "continuing-a-master",
        "replacing-inside-it",
        "what-a-copy-is",
        "planning-and-time-code",
    ),
    lesson="making-an-edit",
    revision=7,
    template="drills/kinds/put_in_order.html",
    candidates=candidates,
    grade=grade,
    near=near,
)
