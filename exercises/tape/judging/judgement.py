"""A finished master, judged."""

from collections.abc import Sequence
from dataclasses import dataclass

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit
from exercises.tape.faults import Fault
from exercises.tape.judging.brief import Brief
from exercises.tape.judging.clean import unclean
from exercises.tape.judging.difference import Difference, Match
from exercises.tape.judging.economy import Economy, Pace, economy
from exercises.tape.judging.faulty import faulty
from exercises.tape.judging.keeping import harms
from exercises.tape.judging.shots import found, laid_of
from exercises.tape.playback import PlaybackState
from exercises.tape.tape import SIDES, Tape


@dataclass(frozen=True, slots=True)
class Judgement:
    """What of a brief is there, what differs, what is bad about it, what it cost.

    states and faults are those where something is wanted, and those new where something
    has to stay.
    """

    matches: tuple[Match, ...]
    differences: tuple[Difference, ...]
    states: tuple[PlaybackState, ...]
    faults: tuple[Fault, ...]
    economy: Economy

    @property
    def fulfilled(self) -> bool:
        """Whether all is as wanted, and plays without a fault."""
        return not (self.differences or self.states or self.faults)


def judge(
    brief: Brief,
    tape: Tape,
    *,
    before: Tape,
    bench: Bench,
    edits: Sequence[Edit] = (),
    pace: Pace | None = None,
) -> Judgement:
    """``tape`` against the brief; ``before`` is the tape as the edits found it.

    What had to stay, what is extra and what was lost is told by comparing the two.
    """
    all_found = [each for side in SIDES for each in found(brief, side, before, tape)]
    differences = [each for each in all_found if isinstance(each, Difference)]
    differences += [harm for kept in brief.kept for harm in harms(kept, before, tape)]
    return Judgement(
        tuple(each for each in all_found if isinstance(each, Match)),
        tuple(sorted(differences, key=lambda each: (each.start, each.end, each.track))),
        unclean(brief, before, tape, bench),
        faulty(brief, before, tape, bench),
        economy(
            edits,
            pace or Pace.default(bench.rate),
            generations=_highest(brief, tape),
            tape=max((run.end for run in tape.control.laid), default=0),
        ),
    )


def _highest(brief: Brief, tape: Tape) -> int:
    return max(
        (
            laid.generation
            for side in SIDES
            for shot in brief.on(side)
            for _, _, laid in laid_of(shot, tape.on(side))
        ),
        default=0,
    )
