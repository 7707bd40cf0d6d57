"""What was wanted of a master, and whether it is there."""

from exercises.tape.judging.brief import Brief, Kept, Wanted
from exercises.tape.judging.difference import Difference, DifferenceKind, Match
from exercises.tape.judging.economy import Economy, Pace
from exercises.tape.judging.judgement import Judgement, judge

__all__ = [
    "Brief",
    "Difference",
    "DifferenceKind",
    "Economy",
    "Judgement",
    "Kept",
    "Match",
    "Pace",
    "Wanted",
    "judge",
]
