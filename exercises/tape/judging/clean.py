"""Where what the brief asks for does not play cleanly."""

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from itertools import islice
from operator import attrgetter

from exercises.tape.bench import Bench
from exercises.tape.judging.brief import Brief
from exercises.tape.judging.ranges import TRACKS, Ranges, asked, kept_on, overlapping
from exercises.tape.playback import Condition, PlaybackState, track_states, worst
from exercises.tape.tape import Tape


def unclean(brief: Brief, before: Tape, after: Tape, bench: Bench) -> tuple[PlaybackState, ...]:
    """The states that are not clean where something is wanted, or has to stay.

    Of all that is true of a frame the worst counts, as in play(); but a track that the
    brief says nothing of there counts for nothing. What had to stay may play as badly as
    it did before, but no worse.
    """
    troubles = [
        list(clipped(states, asked(brief, track)))
        for track, states in zip(TRACKS, track_states(after, bench), strict=True)
    ]
    if brief.kept:
        for found, worse in zip(troubles, _worse(brief, before, after, bench), strict=True):
            found += worse
    if not any(troubles):
        return ()
    control, picture, sound = (_filled(found, after.length) for found in troubles)
    return tuple(
        state for state in worst(control, picture, sound) if state.state is not Condition.CLEAN
    )


def _filled(found: Iterable[PlaybackState], length: int) -> Iterator[PlaybackState]:
    """States of one track as a story from end to end, clean between them."""
    at = 0
    for state in sorted(found, key=attrgetter("start")):
        if state.end > at:
            if state.start > at:
                yield PlaybackState(at, state.start, Condition.CLEAN, None)
            yield state._replace(start=max(at, state.start))
            at = state.end
    if at < length:
        yield PlaybackState(at, length, Condition.CLEAN, None)


def clipped(states: Iterable[PlaybackState], ranges: Ranges) -> Iterator[PlaybackState]:
    """What of the states that are not clean lies in the ranges."""
    for state in states:
        if state.state is not Condition.CLEAN:
            for start, end in overlapping(ranges, state.start, state.end):
                yield state._replace(start=start, end=end)


def _worse(brief: Brief, before: Tape, after: Tape, bench: Bench) -> Iterator[list[PlaybackState]]:
    """What was not so before where something has to stay, on its track and in its pulses."""
    for track, old, new in zip(
        TRACKS, track_states(before, bench), track_states(after, bench), strict=True
    ):
        ranges = kept_on(brief, track)
        former = list(clipped(old, ranges))
        yield [part for state in clipped(new, ranges) for part in _less(state, former)]


def _less(state: PlaybackState, former: Sequence[PlaybackState]) -> Iterator[PlaybackState]:
    """The state without those frames that were in the same condition before."""
    at = state.start
    for each in islice(former, bisect_right(former, at, key=attrgetter("end")), None):
        if each.start >= state.end:
            break
        if each.state is state.state:
            if at < each.start:
                yield state._replace(start=at, end=each.start)
            at = each.end
    if at < state.end:
        yield state._replace(start=at)
