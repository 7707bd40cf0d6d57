"""What had to stay: is it still there, and the same?"""

from collections.abc import Callable, Iterator
from typing import TypeVar

from exercises.tape.judging.brief import Kept
from exercises.tape.judging.difference import LOST, Difference, DifferenceKind
from exercises.tape.judging.stretches import Stretch, side_by_side
from exercises.tape.tape import Tape
from exercises.tape.track import Laid, Pulses, Track

V = TypeVar("V", Laid, Pulses)
Change = tuple[int, int, DifferenceKind]


def harms(kept: Kept, before: Tape, after: Tape) -> Iterator[Difference]:
    """Each stretch that was wiped or recorded over since ``before``."""
    if kept.track == "control":
        changes = _changes(kept, before.control, after.control, _in_phase_from(kept.start))
        return _joined(kept, changes, after.control)
    was, now = (tape.picture if kept.track == "picture" else tape.sound for tape in (before, after))
    return _joined(kept, _changes(kept, was, now, _same_copy), now)


def _same_copy(old: Stretch[Laid], new: Stretch[Laid]) -> bool:
    return old.value == new.value


def _in_phase_from(start: int) -> Callable[[Stretch[Pulses], Stretch[Pulses]], bool]:
    """Pulses are the same if, as far back as ``start``, they are in phase from the same frame."""

    def same(old: Stretch[Pulses], new: Stretch[Pulses]) -> bool:
        if old.run is None or new.run is None:
            return old.run is new.run
        return max(old.run.start, start) == max(new.run.start, start)

    return same


def _changes(
    kept: Kept, was: Track[V], now: Track[V], same: Callable[[Stretch[V], Stretch[V]], bool]
) -> Iterator[Change]:
    for old, new in side_by_side(was.laid, now.laid, kept.start, kept.end):
        if new.run is None:
            if old.run is not None:
                yield old.start, old.end, LOST[kept.track]
        elif not same(old, new):
            yield old.start, old.end, DifferenceKind.TOUCHED
        else:
            yield from _recorded_again(was, now, old.start, old.end)


def _recorded_again(was: Track[V], now: Track[V], start: int, end: int) -> Iterator[Change]:
    """Where the same lies there again because an edit laid it: that, too, is touching it."""
    for former, latter in side_by_side(was.causes, now.causes, start, end):
        if former.value != latter.value:
            yield former.start, former.end, DifferenceKind.TOUCHED


def _joined(kept: Kept, changes: Iterator[Change], now: Track[V]) -> Iterator[Difference]:
    held: Difference | None = None
    for start, end, kind in changes:
        edit = now.cause(start)
        if held and (held.end, held.kind, held.edit) == (start, kind, edit):
            held = Difference(kind, kept.track, held.start, end, edit=edit)
            continue
        if held:
            yield held
        held = Difference(kind, kept.track, start, end, edit=edit)
    if held:
        yield held
