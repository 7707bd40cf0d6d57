"""What was wanted of a master, and whether it is there."""

from exercises.tape.judging.brief import Brief, Kept, Wanted
from exercises.tape.judging.demands import Demand, Miss, first_miss, met, misses, playing
from exercises.tape.judging.difference import Difference, DifferenceKind, Match
from exercises.tape.judging.economy import Economy, Pace
from exercises.tape.judging.judgement import Judgement, judge
from exercises.tape.judging.trouble import TROUBLES, Trouble

__all__ = [
    "TROUBLES",
    "Brief",
    "Demand",
    "Difference",
    "DifferenceKind",
    "Economy",
    "Judgement",
    "Kept",
    "Match",
    "Miss",
    "Pace",
    "Trouble",
    "Wanted",
    "first_miss",
    "judge",
    "met",
    "misses",
    "playing",
]
