"""A player out of adjustment: it is recorded into the copy, and nothing mends it there."""

from collections.abc import Iterator
from itertools import pairwise

from exercises.tape.drift import Adjustment, adjustments
from exercises.tape.faults.blame import blamed
from exercises.tape.faults.fault import Fault, Kind, Measured, Unit, joined
from exercises.tape.faults.meter import Meter
from exercises.tape.faults.severity import graded
from exercises.tape.geometry import envelope_loss
from exercises.tape.making import Player
from exercises.tape.rate import Rate
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.track import Laid

WELL = Player()

# So much further beyond the limit is one grade lower.
LOSS_STEP, SKEW_STEP, TRACK_STEP = 40, 10, 10


def noise_bands(tape: Tape, meter: Meter) -> Iterator[Fault]:
    """Where bad tracking let the heads' signal fall; measured by how far it is down."""
    most = meter.bench.limits.envelope_loss
    return joined(
        Fault(
            Kind.NOISE_BAND,
            "picture",
            start,
            end,
            graded(loss - most - 1, LOSS_STEP),
            edit,
            Measured(loss, Unit.DECIBEL_TENTHS, most),
        )
        for begin, stop, held in _held(tape, meter.bench.rate)
        if (loss := round(envelope_loss(held.tracking))) > most
        for start, end, edit in blamed(tape.picture, begin, stop)
    )


def bent_verticals(tape: Tape, meter: Meter) -> Iterator[Fault]:
    """Where skew made a step at the head change-over; measured by the step in time."""
    most = meter.bench.limits.skew
    return joined(
        Fault(
            Kind.BENT_VERTICALS,
            "picture",
            start,
            end,
            graded(abs(held.skew) - most - 1, SKEW_STEP),
            edit,
            Measured(abs(held.skew), Unit.MICROSECOND_TENTHS, most),
        )
        for begin, stop, held in _held(tape, meter.bench.rate)
        if abs(held.skew) > most
        for start, end, edit in blamed(tape.picture, begin, stop)
    )


def recorder_off_position(tape: Tape, meter: Meter) -> Iterator[Fault]:
    """Recorded with the recorder's tracking away from its fixed position.

    The tracks then lie where no other recording's do.
    """
    most = meter.bench.limits.recorder_tracking
    return joined(
        Fault(
            Kind.RECORDER_OFF_POSITION,
            "picture",
            start,
            end,
            graded(off - most - 1, TRACK_STEP),
            edit,
            Measured(off, Unit.PERCENT, most),
        )
        for run in tape.picture.laid
        if (off := abs(run.value.made.making.recorder.tracking)) > most
        for start, end, edit in blamed(tape.picture, run.start, run.end)
    )


def _held(tape: Tape, rate: Rate) -> Iterator[tuple[int, int, Adjustment]]:
    """How the player stood while each part of the picture was copied; not where it stood well."""
    for run in tape.picture.laid:
        player = run.value.made.making.player
        if player is not WELL and player != WELL:
            yield from _by_second(run, player, rate)


def _by_second(run: Run[Laid], player: Player, rate: Rate) -> Iterator[tuple[int, int, Adjustment]]:
    """In frames of the master; the drift is counted from where the recording began."""
    since = run.value.made.since
    begun = 0 if since is None else run.value.frame - since
    end = begun + run.end - run.start
    held = adjustments(player, end, rate)
    for adjustment, after in pairwise([*held, Adjustment(end, 0, 0)]):
        start, stop = max(adjustment.frame, begun), min(after.frame, end)
        if start < stop:
            yield run.start + start - begun, run.start + stop - begun, adjustment
