"""What a practical came to: the master by its brief, and the hands that made it."""

from exercises.worktop.debrief.debrief import Debrief, debrief

__all__ = ["Debrief", "debrief"]
