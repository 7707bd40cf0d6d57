"""Set the sound level: by hand, with the limiter or by automatic gain, and how far."""

from exercises.drills.kind import Kind
from exercises.drills.set_sound_level.question import candidates
from exercises.drills.set_sound_level.verdict import grade
from exercises.drills.settings import Meter

SET_SOUND_LEVEL = Kind(
    slug="set-sound-level",
    title="Set the sound level",
    purpose="Speech with peaks: by hand, limiter or automatic gain, and where the knob belongs.",
    skills=("sound-level",),
    lesson="picture-and-sound-levels",
    revision=1,
    template="drills/set_sound_level.html",
    candidates=candidates,
    grade=grade,
    needs=frozenset({Meter.VU}),
)
