"""Misconceptions as altered rules of the tape model.

Recording with some of them gives the tape that a believer expects; `as_played` adds what
they expect of playing it, `levelled` what they expect of its levels. Their ids are those of
`exercises.mastery.misconceptions`; a belief that is no rule of recording or playing is not here.
"""

from exercises.drills.beliefs.belief import Belief
from exercises.drills.beliefs.expecting import BELIEFS, PROMISING, as_played, recorded
from exercises.drills.beliefs.levels import LEVEL_BELIEFS, levelled
from exercises.drills.beliefs.trial import Trial

__all__ = [
    "BELIEFS",
    "LEVEL_BELIEFS",
    "PROMISING",
    "Belief",
    "Trial",
    "as_played",
    "levelled",
    "recorded",
]
