"""What a machine shows when the tape is played, frame by frame, and which edit is why."""

from collections.abc import Callable, Iterable, Iterator
from enum import StrEnum
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.passages import Passage, passages
from exercises.tape.runs import Run, Runs
from exercises.tape.tape import Tape
from exercises.tape.track import Cause


class Condition(StrEnum):
    """The states of playback, worst first."""

    NO_CONTROL = "no-control"
    RELOCK = "relock"
    NO_PICTURE = "no-picture"
    UNSETTLED = "unsettled"
    NO_SOUND = "no-sound"
    UNSETTLED_SOUND = "unsettled-sound"
    CLEAN = "clean"


WORST_FIRST = tuple(Condition)


class PlaybackState(NamedTuple):
    """``[start, end)`` in one condition; ``edit`` is the index of the edit that caused it."""

    start: int
    end: int
    state: Condition
    edit: int | None


def play(tape: Tape, bench: Bench) -> tuple[PlaybackState, ...]:
    """The states of a tape, from its first frame to its last, each as long as can be.

    Each frame shows the worst thing that is true of it. The edit is the last one that
    recorded or wiped, at that frame, the track that the state is about: the control
    track for no-control and relock; None where none did, and where playback is clean.
    """
    return tuple(worst(*track_states(tape, bench)))


def worst(
    control: Iterable[PlaybackState],
    picture: Iterable[PlaybackState],
    sound: Iterable[PlaybackState],
) -> Iterator[PlaybackState]:
    """What is seen where three tracks are in these states, each told from end to end."""
    return _longest(_worse(_worse(control, picture), sound))


def track_states(
    tape: Tape, bench: Bench
) -> tuple[Iterator[PlaybackState], Iterator[PlaybackState], Iterator[PlaybackState]]:
    """Control, picture and sound, each for itself: here no track's trouble hides another's.

    Neighbours may be alike.
    """
    along = list(passages(tape, relock=bench.relock))
    return (
        _blamed(along, control_of, tape.control.causes),
        _blamed(along, picture_of, tape.picture.causes),
        _blamed(along, sound_of, tape.sound.causes),
    )


def control_of(passage: Passage) -> Condition:
    if passage.pulses is None:
        return Condition.NO_CONTROL
    return Condition.RELOCK if passage.rolls else Condition.CLEAN


def picture_of(passage: Passage) -> Condition:
    if passage.picture is None:
        return Condition.NO_PICTURE
    return Condition.CLEAN if passage.picture.value.settled else Condition.UNSETTLED


def sound_of(passage: Passage) -> Condition:
    if passage.sound is None:
        return Condition.NO_SOUND
    return Condition.CLEAN if passage.sound.value.settled else Condition.UNSETTLED_SOUND


def condition_of(passage: Passage) -> Condition:
    """What a passage shows: the worst of its three tracks."""
    found = (control_of(passage), picture_of(passage), sound_of(passage))
    return min(found, key=WORST_FIRST.index)


def _blamed(
    along: Iterable[Passage], of: Callable[[Passage], Condition], causes: Runs[Cause]
) -> Iterator[PlaybackState]:
    """States of one track over the whole tape; every passage cut where its cause changes."""
    pending = iter(causes)
    cause: Run[Cause] | None = next(pending, None)
    for passage in along:
        at, end, state = passage.start, passage.end, of(passage)
        if state is Condition.CLEAN:
            yield PlaybackState(at, end, state, None)
            continue
        while at < end:
            while cause is not None and cause.end <= at:
                cause = next(pending, None)
            if cause is None or cause.start >= end:
                stop, edit = end, None
            elif cause.start > at:
                stop, edit = cause.start, None
            else:
                stop, edit = min(end, cause.end), cause.value.edit
            yield PlaybackState(at, stop, state, edit)
            at = stop


def _worse(
    upper: Iterable[PlaybackState], lower: Iterable[PlaybackState]
) -> Iterator[PlaybackState]:
    """The upper states; where they are clean, what the lower ones say of the same frames."""
    lowers = iter(lower)
    below = PlaybackState(0, 0, Condition.CLEAN, None)
    for above in upper:
        if above.state is not Condition.CLEAN:
            yield above
            continue
        at = above.start
        while at < above.end:
            while below.end <= at:
                below = next(lowers)
            stop = min(above.end, below.end)
            yield PlaybackState(at, stop, below.state, below.edit)
            at = stop


def _longest(states: Iterable[PlaybackState]) -> Iterator[PlaybackState]:
    """Neighbours with the same state and edit as one."""
    held: PlaybackState | None = None
    for state in states:
        if held is None:
            held = state
        elif held.state is state.state and held.edit == state.edit:
            held = held._replace(end=state.end)
        else:
            yield held
            held = state
    if held is not None:
        yield held
