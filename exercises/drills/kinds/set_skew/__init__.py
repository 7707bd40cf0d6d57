"""Skew or tracking: tell which control a picture asks for, and turn it to its best position."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_skew.question import candidates

SET_SKEW = Kind(
    slug="set-skew",
    title="Set the skew",
    purpose="Skew or tracking? Tell which control the picture asks for, and turn it.",
    skills=("player-set-up",),
    lesson="setting-up-the-player",
    revision=6,
    template="drills/kinds/knobs/knob.html",
    candidates=candidates,
    grade=grade,
    near=near,
)
