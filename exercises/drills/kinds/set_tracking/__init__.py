"""Set the tracking: by the meter, by the picture, against a meter that misleads."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_tracking.question import candidates

SET_TRACKING = Kind(
    slug="set-tracking",
    title="Set the tracking",
    purpose="Turn a machine’s tracking to where it belongs, by meter and picture.",
    skills=("player-set-up", "recorder-set-up"),
    lesson="setting-up-the-player",
    revision=4,
    template="drills/kinds/knobs/knob.html",
    candidates=candidates,
    grade=grade,
    near=near,
)
