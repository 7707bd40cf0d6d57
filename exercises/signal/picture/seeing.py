"""From what is known of a tape to what is seen of it, frame by frame."""

from dataclasses import dataclass, field
from functools import lru_cache
from math import inf

from exercises.signal.lines import Lines
from exercises.signal.picture.look import Look
from exercises.tape import Bench, Laid, Player, Pulses, Rate, Run, Tape
from exercises.tape.drift import Adjustment, adjustments
from exercises.tape.faults.meter import RunMeter
from exercises.tape.levels import REACH, automatic_white, decibels

STARTLED = 12  # frames that a picture is disturbed where another recorder's tracks begin
DRIFT = 5  # s in which a picture without pulses slides once through the screen (common practice)
HALFWAY = 0.6  # how far the machine is from being locked there (common practice)


@dataclass(frozen=True, slots=True)
class Seen:
    """Which frame of which source is seen, and how; no source: nothing is."""

    source: str | None
    frame: int
    look: Look


@dataclass(frozen=True)
class Seeing:
    """A tape played on its bench by a player that stands well."""

    tape: Tape
    bench: Bench
    meter: RunMeter = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "meter", RunMeter(self.bench))

    @property
    def lines(self) -> Lines:
        return Lines.of(self.bench.rate)

    def at(self, frame: int) -> Seen:
        """Without a picture there is snow; without pulses, what is there drifts and tears."""
        control, run = self.tape.control.at(frame), self.tape.picture.at(frame)
        if run is None:
            return Seen(None, 0, Look(lines=self.lines, blank=True))
        laid = run.value
        return Seen(laid.source, laid.frame + frame - run.start, self._look(run, control, frame))

    def _look(self, run: Run[Laid], control: Run[Pulses] | None, frame: int) -> Look:
        laid = run.value
        levels = self.meter.levels(laid)
        source, gain = (100.0, 0.0) if levels is None else _levels(levels.white, laid)
        stood = adjustment(run, frame, self.bench.rate)
        return Look(
            lines=self.lines,
            source=source,
            gain=gain,
            snr=self.meter.snr(laid) / 10 if laid.generation else inf,
            copies=laid.generation,
            tracking=_worse(stood.tracking, laid.made.machines.recorder.tracking),
            skew=stood.skew / 10,
            settling=self._settling(run, control, frame) if control else None,
            adrift=None if control else self._adrift(frame),
        )

    def _adrift(self, frame: int) -> float:
        round_ = DRIFT * self.bench.rate.nominal
        return frame % round_ / round_

    def _settling(self, run: Run[Laid], control: Run[Pulses], frame: int) -> float | None:
        """The least far that the machine, or one that it was copied by, has got in locking."""
        got = []
        if frame - control.start < self.bench.relock:
            got.append((frame - control.start) / self.bench.relock)
        if not run.value.settled:
            got.append((frame - run.start) / (run.end - run.start))
        if frame - run.start < STARTLED and self._other_recorder(run):
            got.append(HALFWAY + (1 - HALFWAY) * (frame - run.start) / STARTLED)
        return min(got, default=None)

    def _other_recorder(self, run: Run[Laid]) -> bool:
        before = self.tape.picture.at(run.start - 1)
        names = [
            each.value.made.machines.recorder.name for each in (before, run) if each is not None
        ]
        return len(set(names)) > 1


def _levels(white: int, laid: Laid) -> tuple[float, float]:
    """IRE of the source's white, and the gain that it was copied with, in dB."""
    gain = laid.made.machines.picture_gain
    if gain is not None:
        return white, gain / 10
    lifted = decibels(automatic_white(white) / white) if white else REACH
    return white, lifted / 10


def _worse(one: int, other: int) -> float:
    return float(max(one, other, key=abs))


def adjustment(run: Run[Laid], frame: int, rate: Rate) -> Adjustment:
    """How the player stood when this frame of a tape was copied."""
    made = run.value.made
    begun = 0 if made.since is None else run.value.frame - made.since
    since = begun + frame - run.start
    return _stood(made.machines.player, since // rate.nominal, rate)


@lru_cache(maxsize=4096)
def _stood(player: Player, second: int, rate: Rate) -> Adjustment:
    stood = adjustments(player, (second + 1) * rate.nominal, rate)
    return stood[-1]
