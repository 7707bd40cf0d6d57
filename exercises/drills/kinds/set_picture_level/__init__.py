"""Set the picture level by the waveform display."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.knobs.verdict import grade, near
from exercises.drills.kinds.set_picture_level.question import candidates
from exercises.drills.setting.settings import Meter

SET_PICTURE_LEVEL = Kind(
    slug="set-picture-level",
    title="Set the picture level",
    purpose="Turn the picture level until white stands where it belongs on the waveform.",
    skills=("picture-level",),
    lesson="picture-and-sound-levels",
    revision=4,
    template="drills/kinds/knobs/knob.html",
    candidates=candidates,
    grade=grade,
    near=near,
    needs=frozenset({Meter.WAVEFORM}),
)
