"""How a plan's recordings are made: on a well-adjusted bench, sound at line-up."""

from exercises.tape.machines import WELL_ADJUSTED, Machines, SoundLevel
from exercises.tape.planning.target import Target
from exercises.tape.source import Take


def well_made(target: Target, take: Take | None) -> Machines:
    """The gain brings the take's speech to line-up; one recorder makes the whole master."""
    recorder = target.recorder
    levels = take.carried.levels if take else None
    gain = -levels.sound if levels else 0
    if recorder == WELL_ADJUSTED.recorder and not gain:
        return WELL_ADJUSTED
    return Machines(recorder=recorder, sound=SoundLevel(gain=gain))
