"""The faults beyond playback's states, where the brief asks for something."""

from collections.abc import Iterable, Iterator

from exercises.tape.bench import Bench
from exercises.tape.faults import Fault, faults
from exercises.tape.judging.brief import Brief
from exercises.tape.judging.ranges import TRACKS, Ranges, asked, kept_on, overlapping
from exercises.tape.tape import Tape, TrackName

ByTrack = dict[TrackName, Ranges]


def faulty(brief: Brief, before: Tape, after: Tape, bench: Bench) -> tuple[Fault, ...]:
    """Those that lie where something is wanted, and new ones where something has to stay."""
    found = faults(after, bench)
    if not found:
        return ()
    wanted: ByTrack = {track: asked(brief, track) for track in TRACKS}
    kept: ByTrack = {track: kept_on(brief, track) for track in TRACKS}
    former = set(map(_what, _within(faults(before, bench), kept))) if brief.kept else set()
    worse = {fault for fault in _within(found, kept) if _what(fault) not in former}
    spoken_of = worse.union(_within(found, wanted))
    return tuple(fault for fault in found if fault in spoken_of)


def _within(found: Iterable[Fault], ranges: ByTrack) -> Iterator[Fault]:
    for fault in found:
        if any(overlapping(ranges[fault.track], fault.start, fault.end)):
            yield fault


def _what(fault: Fault) -> Fault:
    """The fault, whichever edit caused it."""
    return fault._replace(edit=None)
