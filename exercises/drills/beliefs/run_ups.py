"""Altered rules of what counts as run-up."""

from dataclasses import replace

from exercises.drills.beliefs.trial import Trial
from exercises.tape import Laid, Run, Source, Take, Tape, Track

BLACK = "black"


def by_the_pre_roll(trial: Trial) -> int:
    return trial.spare


def takes_joined(trial: Trial) -> Trial:
    """Takes that touch counted as one, where they were recorded alike."""
    source = trial.change.source
    joined: list[Take] = []
    for take in source.takes:
        if joined and _touch(joined[-1], take):
            joined[-1] = replace(joined[-1], end=take.end)
        else:
            joined.append(take)
    change = replace(trial.change, source=Source(source.name, tuple(joined)))
    return replace(trial, change=change)


def _touch(first: Take, second: Take) -> bool:
    return replace(first, start=first.end, end=second.end) == second


def black_for_nothing(_: Trial, tape: Tape) -> Tape:
    return without_black(tape)


def without_black(tape: Tape) -> Tape:
    """Wherever black is all there is, nothing at all: no picture, no sound, no pulses."""
    for seen in _black(tape.picture):
        for heard in _black(tape.sound):
            start, end = max(seen.start, heard.start), min(seen.end, heard.end)
            if start < end:
                tape = _blank(tape, start, end)
    return tape


def _black(track: Track[Laid]) -> list[Run[Laid]]:
    return [run for run in track.runs if run.value.source == BLACK]


def _blank(tape: Tape, start: int, end: int) -> Tape:
    control = tape.control.over(start, end, [], cause=None)
    picture, sound = (
        track.over(start, end, [], cause=None) for track in (tape.picture, tape.sound)
    )
    return Tape(tape.length, control, picture, sound)
