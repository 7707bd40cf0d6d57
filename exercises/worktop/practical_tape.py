"""The cassettes on the shelf, as an author tells of them: in seconds, and percent of a run-up."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class LogMistake:
    """What the shot log has wrong about where a take lies.

    late    seconds by which it has the take too late; below 0, too early
    run_up  the run-up that it gives the take, in percent of what locks a machine; None: the
            run-up that there is
    """

    late: int = 0
    run_up: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PracticalTake:
    """One uninterrupted recording on a source tape.

    shows    what is seen: a scene of the film or a test pattern (`signal.footage`)
    log      what the shot log says of it
    before   seconds of blank tape before it
    run_up   what the camera ran before the action, in percent of what locks a machine
    lasts    seconds of the action
    lines    what is said, by the names of the recorded lines
    white    IRE of its white; None: that of its tape
    sound    level of its speech, in 0.1 dB over line-up; None: that of its tape
    mistake  where the log has it, if that is not where it lies
    """

    name: str
    shows: str
    log: str
    before: int
    run_up: int
    lasts: int
    lines: tuple[str, ...] = ()
    white: int | None = None
    sound: int | None = None
    mistake: LogMistake = LogMistake()


@dataclass(frozen=True, slots=True, kw_only=True)
class PracticalTape:
    """A source tape and the machine it was recorded on.

    tracking  where the player's control follows its tracks, in percent of a track off the middle
    skew      where it is straight, in 0.1 µs
    reel      by how much `tracking` moves along the reel, in percent of a track in ten minutes
    signal    what the tracking meter shows at its peak, in hundredths of its scale
    white     IRE of its white, its bars included
    sound     level of its speech and tone, in 0.1 dB over line-up
    """

    name: str
    takes: tuple[PracticalTake, ...]
    tracking: int = 0
    skew: int = 0
    reel: int = 0
    signal: int = 80
    white: int = 100
    sound: int = 0
