"""Pictures as they are sent: still, moving, and in strips."""

from exercises.signal.motion.clip import clip, write_clip
from exercises.signal.motion.strip import Strip, jpeg, strip

__all__ = ["Strip", "clip", "jpeg", "strip", "write_clip"]
