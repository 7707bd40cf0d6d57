"""A tape map in the learner’s own count: their edits from 1 on, and what was there before them."""

from dataclasses import replace

from exercises.tape import TapeMap
from exercises.tape.map.parts import FaultMark
from exercises.worktop.set_up import SetUp


def numbered(shown: TapeMap, set_up: SetUp) -> TapeMap:
    """A map of the master whose marks count the edits of the whole session."""
    if shown.faults is None:
        return shown
    earlier = len(set_up.document["edits"])
    return replace(shown, faults=tuple(_counted(each, earlier) for each in shown.faults))


def _counted(mark: FaultMark, earlier: int) -> FaultMark:
    if mark.edit is None:
        return mark
    sentence = mark.sentence.removesuffix(f" (edit {mark.edit + 1})")
    own = mark.edit - earlier
    if own < 0:
        return replace(mark, edit=None, sentence=f"{sentence} (from before)")
    return replace(mark, edit=own, sentence=f"{sentence} (edit {own + 1})")
