from collections.abc import Iterator

from exercises.tape.faults.blame import blamed
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit, joined
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.severity import Severity
from exercises.tape.noise import grade_snr, noise_grade
from exercises.tape.tape import Tape


def too_many_generations(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Pictures whose whole chain of copies leaves more noise than the grade asked for.

    Measured by their signal-to-noise. The severity is the grade that the noise leaves, by
    the same formula.
    """
    least = 10 * grade_snr(meter.bench.limits.grade)
    return joined(
        Fault(
            FaultKind.TOO_MANY_GENERATIONS,
            "picture",
            start,
            end,
            Severity(int(noise_grade(snr / 10))),
            edit,
            Measured(round(snr), Unit.DECIBEL_TENTHS, round(least)),
        )
        for run in tape.picture.laid
        if round(snr := meter.snr(run.value)) < round(least)
        for start, end, edit in blamed(tape.picture, run.start, run.end)
    )
