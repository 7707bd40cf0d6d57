"""What is new where the brief wants nothing."""

from collections.abc import Iterator

from exercises.tape.judging.brief import Brief
from exercises.tape.judging.comparing import right
from exercises.tape.judging.stretches import Stretch, side_by_side
from exercises.tape.tape import Side
from exercises.tape.track import Laid, Track
from exercises.tape.work import spend


def free(brief: Brief, side: Side, length: int) -> Iterator[tuple[int, int]]:
    """Where a track neither holds a wanted shot nor has to keep what it has."""
    spoken = [(shot.at, shot.end) for shot in brief.on(side)]
    spoken += [(kept.start, kept.end) for kept in brief.kept if kept.track == side]
    at = 0
    for start, end in sorted(spoken):
        if at < start:
            yield at, start
        at = max(at, end)
    if at < length:
        yield at, length


def extras(
    brief: Brief, side: Side, before: Track[Laid], after: Track[Laid], length: int
) -> Iterator[Stretch[Laid]]:
    """New recordings in free places, but black; none on a track without wanted shots.

    A shot may run over its edges as far as its tolerance goes.
    """
    if not brief.on(side):
        return
    for start, end in free(brief, side, length):
        for old, new in side_by_side(before.laid, after.laid, start, end):
            if new.run is None or new.run.value.source == brief.black or old.value == new.value:
                continue
            if not _in_tolerance(brief, side, new):
                yield new


def _in_tolerance(brief: Brief, side: Side, new: Stretch[Laid]) -> bool:
    spend(1 + len(brief.on(side)) // 8)
    if new.run is None or all(shot.tolerance == 0 for shot in brief.on(side)):
        return False
    return any(
        right(new.run, shot)
        and shot.at - shot.tolerance <= new.start
        and new.end <= shot.end + shot.tolerance
        for shot in brief.on(side)
    )
