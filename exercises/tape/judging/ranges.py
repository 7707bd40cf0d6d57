"""The frames that a brief speaks of, track by track."""

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from itertools import chain, islice
from operator import itemgetter

from exercises.tape.judging.brief import Brief
from exercises.tape.judging.comparing import places
from exercises.tape.tape import Side, TrackName

Ranges = Sequence[tuple[int, int]]
TRACKS: tuple[TrackName, ...] = ("control", "picture", "sound")


def asked(brief: Brief, track: TrackName) -> Ranges:
    """Where something is wanted; of the control track, where anything is."""
    if track == "control":
        return merged(chain(_shots(brief, "picture"), _shots(brief, "sound")))
    return merged(_shots(brief, track))


def kept_on(brief: Brief, track: TrackName) -> Ranges:
    """Where something has to stay; whatever it is, it needs its pulses."""
    return merged((kept.start, kept.end) for kept in brief.kept if track in (kept.track, "control"))


def merged(ranges: Iterable[tuple[int, int]]) -> Ranges:
    """The same frames as ranges in order that neither touch nor overlap."""
    joined: list[tuple[int, int]] = []
    for start, end in sorted(ranges):
        if joined and start <= joined[-1][1]:
            joined[-1] = joined[-1][0], max(joined[-1][1], end)
        else:
            joined.append((start, end))
    return joined


def overlapping(ranges: Ranges, start: int, end: int) -> Iterator[tuple[int, int]]:
    """What of ``[start, end)`` lies in the ranges."""
    for first, last in islice(ranges, bisect_right(ranges, start, key=itemgetter(1)), None):
        if first >= end:
            return
        yield max(first, start), min(last, end)


def _shots(brief: Brief, side: Side) -> Iterator[tuple[int, int]]:
    """The shots, less what may be missing at an edge that meets no other shot."""
    for shot, before, after in places(brief.on(side)):
        yield (
            shot.at if before else shot.at + shot.slack,
            shot.end if after else shot.end - shot.slack,
        )
