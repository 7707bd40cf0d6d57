"""Set the sound level: each take by hand, and what limiter and automatic gain make of it."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.knobs.verdict import near
from exercises.drills.kinds.set_sound_level.question import candidates
from exercises.drills.kinds.set_sound_level.verdict import grade
from exercises.drills.setting.settings import Meter

SET_SOUND_LEVEL = Kind(
    slug="set-sound-level",
    title="Set the sound level",
    purpose="Two takes at two levels: where does the control belong, and what does help do?",
    skills=("sound-level",),
    lesson="picture-and-sound-levels",
    revision=3,
    template="drills/kinds/set_sound_level.html",
    candidates=candidates,
    grade=grade,
    near=near,
    needs=frozenset({Meter.VU}),
)
