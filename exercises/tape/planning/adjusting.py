"""How a plan's recordings are made: on a well-adjusted bench, sound at line-up."""

from exercises.tape.making import WELL_ADJUSTED, Making, Recorder, SoundLevel
from exercises.tape.planning.target import Target
from exercises.tape.source import Take


def well_made(target: Target, take: Take | None) -> Making:
    """The gain brings the take's speech to line-up; one recorder makes the whole master."""
    recorder = _recorder(target)
    levels = take.carried.levels if take else None
    gain = -levels.sound if levels else 0
    if recorder == WELL_ADJUSTED.recorder and not gain:
        return WELL_ADJUSTED
    return Making(recorder=recorder, sound=SoundLevel(gain=gain))


def _recorder(target: Target) -> Recorder:
    """The machine that the master was begun on, if it was begun on one."""
    used = {run.value.made.making.recorder for run in target.before.picture.laid}
    named = {recorder.name for recorder in used}
    if len(named) != 1:
        return WELL_ADJUSTED.recorder
    first = min(used, key=lambda recorder: (abs(recorder.tracking), recorder.snr or 0))
    return Recorder(first.name, snr=first.snr)
