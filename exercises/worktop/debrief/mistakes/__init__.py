"""What went wrong: each mistake once, however many tracks it shows on."""

from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.mistakes.mistake import Mistake, mistakes
from exercises.worktop.debrief.mistakes.weight import worst

__all__ = ["Mistake", "MistakeKind", "mistakes", "worst"]
