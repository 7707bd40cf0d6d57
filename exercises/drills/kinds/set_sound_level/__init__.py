"""Set the sound level: each take by hand, and what limiter and automatic gain make of it."""

from exercises.drills.kind import Kind
from exercises.drills.knobs.verdict import near
from exercises.drills.set_sound_level.question import candidates
from exercises.drills.set_sound_level.verdict import grade
from exercises.drills.settings import Meter

SET_SOUND_LEVEL = Kind(
    slug="set-sound-level",
    title="Set the sound level",
    purpose="Two takes at two levels: where does the control belong, and what does help do?",
    skills=("sound-level",),
    lesson="picture-and-sound-levels",
    revision=3,
    template="drills/set_sound_level.html",
    candidates=candidates,
    grade=grade,
    near=near,
    needs=frozenset({Meter.VU}),
)
