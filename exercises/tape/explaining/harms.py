"""What is missing of what was demanded, put together so that each thing is said once."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from exercises.tape.judging.demands import Miss
from exercises.tape.judging.trouble import Trouble
from exercises.tape.tape import Side


@dataclass(frozen=True, slots=True)
class Harm:
    """`[start, end)` of wanted tracks that isn't there, for one reason."""

    tracks: tuple[Side, ...]
    new: bool
    trouble: Trouble
    moved: int
    start: int
    end: int


def harms(missing: Iterable[Miss]) -> Iterator[Harm]:
    """The misses put together, what is new first: neighbours, and tracks that suffer alike.

    That what follows doesn't move is one harm, the first: it says it all.
    """
    alike: dict[tuple[bool, int, int, Trouble, int], list[Side]] = {}
    for miss in _joined(missing):
        want = miss.want
        place = (not want.new, miss.start, miss.end, miss.trouble, want.moved)
        alike.setdefault(place, []).append(want.track)
    moved_told = False
    for (kept, start, end, trouble, moved), tracks in sorted(alike.items()):
        if not (moved and moved_told):
            yield Harm(tuple(tracks), not kept, trouble, moved, start, end)
        moved_told = moved_told or bool(moved)


def _joined(missing: Iterable[Miss]) -> Iterator[Miss]:
    held: Miss | None = None
    for miss in missing:
        if held and held.end == miss.start and _kind(held) == _kind(miss):
            held = Miss(held.want, held.trouble, held.start, miss.end)
            continue
        if held:
            yield held
        held = miss
    if held:
        yield held


def _kind(miss: Miss) -> tuple[Side, bool, int, Trouble]:
    return miss.want.track, miss.want.new, miss.want.moved, miss.trouble
