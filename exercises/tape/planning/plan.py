"""The best way to a brief, or why there is none."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit
from exercises.tape.faults import Fault
from exercises.tape.faults.wording import sentence
from exercises.tape.judging import Brief, Economy, Pace, judge
from exercises.tape.planning.hindrances import Hindrances
from exercises.tape.planning.moving import moved
from exercises.tape.planning.reasons import reason
from exercises.tape.planning.search import MOST, Search, SearchStep
from exercises.tape.planning.target import Target
from exercises.tape.recording import record
from exercises.tape.source import Source
from exercises.tape.tape import Tape
from exercises.tape.wording import span
from exercises.tape.work import USUAL, limited

IMPOSSIBLE = "No list of recordings does it: each spoils something that is wanted or has to stay."
NOT_FOUND = f"No list of up to {MOST} recordings was found that does it."


@dataclass(frozen=True, slots=True)
class Planned:
    """A recording of a plan, and why it is made so."""

    edit: Edit
    reason: str


@dataclass(frozen=True, slots=True)
class Plan:
    """The recordings in their order; ``exact`` if there is no cheaper list of them."""

    recordings: tuple[Planned, ...]
    economy: Economy
    exact: bool = True

    @property
    def edits(self) -> tuple[Edit, ...]:
        return tuple(planned.edit for planned in self.recordings)


@dataclass(frozen=True, slots=True)
class NoPlan:
    """Why no list of recordings fulfils the brief: full sentences with the facts."""

    reasons: tuple[str, ...]


def plan(
    brief: Brief,
    tape: Tape,
    *,
    sources: Mapping[str, Source],
    bench: Bench,
    pace: Pace | None = None,
    first: int = 0,
    steps: int = USUAL,
) -> Plan | NoPlan:
    """The cheapest list of recordings that makes the tape fulfil the brief without a fault.

    Fewest recordings first, then fewest recorded frames; no list of up to 12 recordings
    is better, unless the plan says that it is not ``exact``: a brief may be too tangled to
    try everything, and on a bench whose pulses never roll a wipe may do more than is tried.
    Each recording is made on a
    well-adjusted bench, its sound brought to line-up, from source tape without blanks,
    and lies where the brief wants it: a cut is moved only within its tolerance, and only
    for a run-up. ``first`` is the index that the first recording is to have as a cause.

    Raises TooMuchWork where it takes more than so many ``steps`` (see work.py).
    """
    with limited(steps):
        return _plan(brief, tape, sources, bench, pace, first)


def _plan(
    brief: Brief,
    tape: Tape,
    sources: Mapping[str, Source],
    bench: Bench,
    pace: Pace | None,
    first: int,
) -> Plan | NoPlan:
    asked = Target(brief, tape, sources, bench)
    target = replace(asked, brief=moved(asked))
    hindrances = tuple(Hindrances(target))
    if hindrances:
        return NoPlan(hindrances)
    search = Search(target, first)
    found = search.run()
    if found is None:
        return NoPlan((IMPOSSIBLE if search.exact else NOT_FOUND,))
    judgement = judge(brief, found.tape, before=tape, bench=bench, edits=found.edits, pace=pace)
    if not judgement.fulfilled:
        faults = tuple(_still(fault, bench) for fault in judgement.faults)
        return NoPlan(faults or (NOT_FOUND,))
    exact = search.exact and bench.relock > 0
    return Plan(tuple(_planned(target, found)), judgement.economy, exact)


def _planned(target: Target, found: SearchStep) -> Iterator[Planned]:
    tape = target.before
    for edit in found.edits:
        yield Planned(edit, reason(target, tape, edit))
        tape = record(tape, edit, target.bench)


def _still(fault: Fault, bench: Bench) -> str:
    """A fault of what the brief asks for, such as a cut inside a word."""
    where = span(fault.start, fault.end, bench.rate, bench.drop_frame)
    return f"Even the best list of recordings leaves a fault {where}: {sentence(fault)}."
