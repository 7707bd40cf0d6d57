"""The finished master as a tape map, of the part that matters."""

from collections.abc import Iterator
from dataclasses import replace

from exercises.tape import Condition, TapeMap, tape_map
from exercises.tape.map.drawing import marked
from exercises.tape.map.parts import FaultMark
from exercises.tape.map.window import Window
from exercises.worktop.debrief.edges import told_place
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.numbered import numbered

ASIDE = 2  # seconds that are shown beyond what matters


def drawn(run: Proceedings) -> TapeMap:
    """Faults are marked where the brief wants or keeps something; elsewhere nothing can be wrong.

    They name the learner's edits by their own numbers.
    """
    start, end = part_that_matters(run)
    names = {tape.name: tape.name for tape in run.set_up.tapes}
    found = tape_map(run.top.master, run.bench, start=start, end=end, names=names, faults=False)
    window = Window(start, end, run.bench.rate, run.bench.drop_frame)
    judged = run.judgement
    marks = tuple(marked(run.top.master, judged.states, judged.faults, window))
    told = tuple(_on_the_sheet(mark, run) for mark in marks)
    return numbered(replace(found, faults=told or None), run.set_up)


def _on_the_sheet(mark: FaultMark, run: Proceedings) -> FaultMark:
    if mark.state not in list(Condition):
        return mark
    place = told_place(mark.start, mark.end, run)
    return replace(mark, starts=place["starts"], ends=place["ends"])


def part_that_matters(run: Proceedings) -> tuple[int, int]:
    """What is wanted, kept or recorded, with a run-up before it and what is wiped behind it."""
    ends = list(_ends(run)) or [(0, run.set_up.master_length)]
    first, last = min(start for start, _ in ends), max(end for _, end in ends)
    aside = ASIDE * run.bench.rate.nominal
    before, behind = run.bench.lock + aside, run.bench.erase_gap + aside
    return max(0, first - before), min(run.set_up.master_length, last + behind)


def _ends(run: Proceedings) -> Iterator[tuple[int, int]]:
    yield from ((shot.at, shot.end) for shot in run.brief.wanted)
    yield from ((kept.start, kept.end) for kept in run.brief.kept)
    yield from ((made.edit.at, made.edit.end) for made in run.made)
