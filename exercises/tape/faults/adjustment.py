"""A player out of adjustment: it is recorded into the copy, and nothing mends it there."""

from collections.abc import Callable, Iterator, Sequence

from exercises.tape.drift import Adjustment
from exercises.tape.faults.blame import blamed
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit, joined
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.severity import graded
from exercises.tape.geometry import envelope_loss
from exercises.tape.machines import Player
from exercises.tape.tape import Tape

Spell = tuple[int, int, int]  # where from, where to, and the worst that was measured

WELL = Player()

# So much further beyond the limit is one grade lower.
LOSS_STEP, SKEW_STEP, TRACK_STEP = 40, 10, 10


def noise_bands(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Where bad tracking let the heads' signal fall; measured by how far it is down."""
    most = meter.bench.limits.envelope_loss
    return joined(
        Fault(
            FaultKind.NOISE_BAND,
            "picture",
            start,
            end,
            graded(loss - most - 1, LOSS_STEP),
            edit,
            Measured(loss, Unit.DECIBEL_TENTHS, most),
        )
        for begin, stop, loss in _spells(tape, meter, _loss, most)
        for start, end, edit in blamed(tape.picture, begin, stop)
    )


def bent_verticals(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Where skew made a step at the head change-over; measured by the step in time."""
    most = meter.bench.limits.skew
    return joined(
        Fault(
            FaultKind.BENT_VERTICALS,
            "picture",
            start,
            end,
            graded(step - most - 1, SKEW_STEP),
            edit,
            Measured(step, Unit.MICROSECOND_TENTHS, most),
        )
        for begin, stop, step in _spells(tape, meter, _step, most)
        for start, end, edit in blamed(tape.picture, begin, stop)
    )


def recorder_off_position(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Recorded with the recorder's tracking away from its fixed position.

    The tracks then lie where no other recording's do.
    """
    most = meter.bench.limits.recorder_tracking
    return joined(
        Fault(
            FaultKind.RECORDER_OFF_POSITION,
            "picture",
            start,
            end,
            graded(off - most - 1, TRACK_STEP),
            edit,
            Measured(off, Unit.PERCENT, most),
        )
        for run in tape.picture.laid
        if (off := abs(run.value.made.machines.recorder.tracking)) > most
        for start, end, edit in blamed(tape.picture, run.start, run.end)
    )


def _loss(held: Adjustment) -> int:
    return round(envelope_loss(held.tracking))


def _step(held: Adjustment) -> int:
    return abs(held.skew)


def _spells(
    tape: Tape, meter: RunMeter, measured: Callable[[Adjustment], int], most: int
) -> Iterator[Spell]:
    """Where the player stood so badly that more than ``most`` was measured."""
    for run in tape.picture.laid:
        player = run.value.made.machines.player
        if player is WELL or player == WELL:
            continue
        since = run.value.made.since
        begun = 0 if since is None else run.value.frame - since
        end = begun + run.end - run.start
        held = meter.adjustments(player, begun, end)
        for start, stop, worst in _bad(held, end, measured, most):
            yield run.start + max(start - begun, 0), run.start + stop - begun, worst


def _bad(
    held: Sequence[Adjustment], end: int, measured: Callable[[Adjustment], int], most: int
) -> Iterator[Spell]:
    """The same in frames of the recording, which goes on to ``end``."""
    start: int | None = None
    worst = 0
    for adjustment in held:
        value = measured(adjustment)
        if value > most:
            start = adjustment.frame if start is None else start
            worst = max(worst, value)
        elif start is not None:
            yield start, adjustment.frame, worst
            start, worst = None, 0
    if start is not None:
        yield start, end, worst
