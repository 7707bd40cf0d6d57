"""Altered rules of levels: what a recorder, or whoever plays a tape, is expected to do to them.

A belief changes how a tape is taken to have been made, or how the bench works; the faults that
the model then finds are those that a believer expects.
"""

from collections.abc import Callable, Collection
from dataclasses import dataclass, replace

from exercises.tape import Bench, History, Laid, Run, SoundMode, Tape, Track
from exercises.tape.levels import WHITE
from exercises.tape.runs import Runs

LONG = 10**9  # ms: a gain that comes back so slowly stays where it is


def _made_as_before(made: History) -> History:
    return made


def _same_bench(bench: Bench) -> Bench:
    return bench


@dataclass(frozen=True, slots=True)
class LevelBelief:
    """`picture` and `sound` say how what lies on a track is expected to have been made."""

    id: str
    picture: Callable[[History], History] = _made_as_before
    sound: Callable[[History], History] = _made_as_before
    bench: Callable[[Bench], Bench] = _same_bench


def _put_right(made: History) -> History:
    """White where it belongs, whatever it was recorded at."""
    if made.carried.levels is None:
        return made
    levels = replace(made.carried.levels, white=WHITE)
    carried, machines = replace(made.carried, levels=levels), replace(made.machines, picture_gain=0)
    return replace(made, carried=carried, machines=machines)


def _lifted(made: History) -> History:
    """A limiter for automatic gain."""
    sound = made.machines.sound
    if sound.mode is not SoundMode.LIMITER:
        return made
    held = replace(sound, mode=SoundMode.AUTOMATIC)
    return replace(made, machines=replace(made.machines, sound=held))


def _alike(made: History) -> History:
    """A setting that fits whatever take is played, whichever it was made for."""
    sound, levels = made.machines.sound, made.carried.levels
    if levels is None or sound.mode is not SoundMode.BY_HAND:
        return made
    fitting = replace(sound, gain=-levels.sound)
    return replace(made, machines=replace(made.machines, sound=fitting))


def _steady(bench: Bench) -> Bench:
    """Automatic gain that waits through every pause, and lifts no room."""
    return replace(bench, automatic_gain=replace(bench.automatic_gain, release=LONG))


LEVEL_BELIEFS: dict[str, LevelBelief] = {
    belief.id: belief
    for belief in (
        LevelBelief("level-is-seen-later", picture=_put_right),
        LevelBelief("one-level-for-all", sound=_alike),
        LevelBelief("limiter-is-agc", sound=_lifted),
        LevelBelief("agc-evens-out", bench=_steady),
    )
}


def levelled(tape: Tape, bench: Bench, beliefs: Collection[str]) -> tuple[Tape, Bench]:
    """A tape and its bench, as somebody with these beliefs takes their levels to be."""
    for belief in LEVEL_BELIEFS.values():
        if belief.id in beliefs:
            picture = _remade(tape.picture, belief.picture)
            sound = _remade(tape.sound, belief.sound)
            tape = Tape(tape.length, tape.control, picture, sound)
            bench = belief.bench(bench)
    return tape, bench


def _remade(track: Track[Laid], made: Callable[[History], History]) -> Track[Laid]:
    """A track with everything on it made so, by the same edits."""
    if made is _made_as_before:
        return track
    runs = tuple(
        Run(run.start, run.end, replace(run.value, made=made(run.value.made))) for run in track.laid
    )
    return Track(Runs((runs,) if runs else ()), track.causes)
