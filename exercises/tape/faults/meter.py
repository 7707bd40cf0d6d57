"""What a recording measures, worked out once for all runs that were made alike."""

from exercises.tape.bench import Bench
from exercises.tape.drift import Adjustment, adjustments
from exercises.tape.history import History
from exercises.tape.levels import LINED_UP, Levels, automatic_white, gained
from exercises.tape.machines import Player, SoundMode
from exercises.tape.noise import chain_snr, equal_copies_snr
from exercises.tape.track import Laid
from exercises.tape.work import spend

BLACK = "black"  # a source of this name has no white and no sound, unless it says so


class RunMeter:
    """Keeps its readings for as long as the runs that it is shown are kept."""

    def __init__(self, bench: Bench) -> None:
        self.bench = bench
        self._whites: dict[int, float] = {}
        self._sounds: dict[int, float] = {}
        self._snrs: dict[tuple[int, int], float] = {}
        self._wandered: dict[Player, tuple[Adjustment, ...]] = {}

    def levels(self, laid: Laid) -> Levels | None:
        """What its source carries; None where there is nothing to measure."""
        levels = laid.made.carried.levels
        if laid.source == BLACK and levels == LINED_UP:
            return None
        return levels

    def white(self, laid: Laid) -> float | None:
        """IRE of the white on the tape."""
        levels = self.levels(laid)
        if levels is None:
            return None
        key = id(laid.made)
        if key not in self._whites:
            self._whites[key] = white_of(laid.made, levels)
        return self._whites[key]

    def sound(self, laid: Laid) -> float | None:
        """Level of the speech on the tape, in tenths of a dB over line-up."""
        levels = self.levels(laid)
        if levels is None:
            return None
        key = id(laid.made)
        if key not in self._sounds:
            self._sounds[key] = sound_of(laid.made, levels, self.bench)
        return self._sounds[key]

    def limited(self, laid: Laid) -> float | None:
        """What the recorder's limiter took off the speech, in tenths of a dB."""
        levels, setting = self.levels(laid), laid.made.machines.sound
        if levels is None or setting.mode is not SoundMode.LIMITER:
            return None
        level = levels.sound + setting.gain
        return level - self.bench.limiter.out(level)

    def snr(self, laid: Laid) -> float:
        """Signal-to-noise through the whole chain of recordings, in tenths of a dB."""
        key = (id(laid.made), laid.generation)
        if key not in self._snrs:
            spend(len(laid.made.chain) // 8)
            self._snrs[key] = snr_of(laid.made, laid.generation, self.bench)
        return self._snrs[key]

    def adjustments(self, player: Player, begun: int, end: int) -> tuple[Adjustment, ...]:
        """How the player stood in the seconds of ``[begun, end)`` of a recording."""
        if player.drift is None:
            return adjustments(player, end, self.bench.rate)
        second = self.bench.rate.nominal
        first, out = begun // second, -(-end // second)
        known = self._wandered.get(player, ())
        if len(known) < out:
            # Twice as far as before, so that many parts of one recording stay cheap.
            known = adjustments(player, max(out, 2 * len(known)) * second, self.bench.rate)
            self._wandered[player] = known
        return known[first:out]


def white_of(made: History, levels: Levels) -> float:
    gain = made.machines.picture_gain
    return automatic_white(levels.white) if gain is None else gained(levels.white, gain)


def sound_of(made: History, levels: Levels, bench: Bench) -> float:
    """Under automatic gain, what it comes to rest at: its attack is short against a word."""
    setting = made.machines.sound
    level = levels.sound + setting.gain
    if setting.mode is SoundMode.LIMITER:
        return bench.limiter.out(level)
    if setting.mode is SoundMode.AUTOMATIC:
        return level + bench.automatic_gain.settled(level)
    return level


def snr_of(made: History, generation: int, bench: Bench) -> float:
    """Each recording that is not said to be otherwise has the bench's own figure."""
    known = [snr / 10 for snr in made.chain]
    usual = generation - len(known)
    return 10 * chain_snr([*known, equal_copies_snr(bench.snr / 10, usual)] if usual > 0 else known)
