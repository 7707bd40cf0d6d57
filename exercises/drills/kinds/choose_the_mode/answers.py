"""The five answers: which of them are right, and which belief a wrong one reveals."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations, islice

from exercises.drills.asks import Choice, Option
from exercises.drills.beliefs import BELIEFS, PROMISING, Trial, as_played, recorded
from exercises.drills.kinds.choose_the_mode.scenario import Task
from exercises.drills.setting.change import Mode
from exercises.tape.judging import Demand, met

CANNOT = "cannot"

OPTIONS = (
    *(Option(value=mode.value, text=mode.words) for mode in Mode),
    Option(value=CANNOT, text="No single recording makes it"),
)
ASK = Choice(name="mode", legend="Which single recording makes this change?", options=OPTIONS)

MIX = "two-machines-dissolve"
BOTH = "insert-takes-both"
# No takes touch here.
ASKED = tuple(belief for belief in PROMISING if belief.id != "touching-takes-share-pulses")


def works(task: Task, mode: Mode, beliefs: tuple[str, ...] = ()) -> bool:
    """Whether one recording in this mode gives all that is wanted, or so a believer expects."""
    wants = unmixed(task.wants) if MIX in beliefs else task.wants
    trial = Trial(task.master, task.change, mode, task.bench)
    rules = [belief for belief in beliefs if belief != MIX]
    return met(wants, as_played(recorded(trial, rules), task.bench, rules), task.bench)


def unmixed(wants: tuple[Demand, ...]) -> tuple[Demand, ...]:
    """The wants of somebody who takes a cut for the mix."""
    return tuple(replace(want, mixed=False) for want in wants)


def right_answers(task: Task) -> list[str]:
    """The modes that work; where none does, that it can't be done is the right answer."""
    return [mode.value for mode in Mode if works(task, mode)] or [CANNOT]


def revealed(task: Task, right: str) -> dict[str, list[str]]:
    """For each wrong answer that some belief makes right: the first such belief, or two."""
    found = {mode.value: first_of(explanations(task, mode)) for mode in Mode}
    if right != CANNOT:
        found[CANNOT] = despairing(task, Mode(right))
    return {answer: beliefs for answer, beliefs in found.items() if beliefs and answer != right}


def despairing(task: Task, right: Mode) -> list[str]:
    """The belief by which the mode that is right doesn't work either."""
    spoils = (
        belief
        for belief in ("insert-ends-ragged", BOTH)
        if right in BELIEFS[belief].modes and not works(task, right, (belief,))
    )
    return list(islice(spoils, 1))


def explanations(task: Task, mode: Mode) -> Iterator[tuple[str, ...]]:
    """The beliefs that make a mode work: one of them alone, or else two together."""
    if not set(task.change.tracks) <= set(mode.tracks):
        return
    ids = [belief.id for belief in ASKED if mode in belief.modes]
    if any(want.mixed for want in task.wants):
        ids.append(MIX)
    for size in (1, 2):
        yield from (pair for pair in combinations(ids, size) if works(task, mode, pair))


def first_of(explanations: Iterator[tuple[str, ...]]) -> list[str]:
    return list(next(explanations, ()))
