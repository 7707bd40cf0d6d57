"""Where a ruler's ticks stand: four to seven of them, at round times."""

from exercises.tape.rate import Rate
from exercises.tape.timecode import frame_at

FEWEST, MOST = 4, 7

# Steps people count in; frames, roundest first, come where no whole seconds fit.
SECONDS = (1, 2, 3, 5, 6, 10, 15, 20, 30, 45, 60, 90)
MINUTES = (2, 3, 5, 6, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300)
FRAMES = (45, 40, 10, 5, 15, 20, 2, 3, 6, 1)


def ticks(start: int, end: int, rate: Rate, drop: bool = False) -> tuple[int, ...]:
    """The frames in ``[start, end)`` where a tick stands; a few frames have a tick each.

    Where labels are left out, ticks stand at round labels all the same.
    """
    step = _step(end - start, rate.nominal)
    if drop:
        later = end + end // 800  # of 1,800 labels two at most are left out
        frames = sorted({frame_at(count) for count in range(start - start % step, later, step)})
        return tuple(frame for frame in frames if start <= frame < end)
    return tuple(range(start + -start % step, end, step))


def _step(length: int, second: int) -> int:
    shortest, longest = -(-length // MOST), max(length // FEWEST, 1)
    seconds = [second * count for count in (*SECONDS, *(60 * minutes for minutes in MINUTES))]
    fitting = (step for step in (*seconds, *FRAMES) if shortest <= step <= longest)
    return next(fitting, shortest)
