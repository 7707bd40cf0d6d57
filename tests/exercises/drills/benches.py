"""Benches at the limits of what an instructor can set."""

from exercises.drills.setting.settings import LONGEST_ERASE_GAP, PRE_ROLL, Meter, Settings
from exercises.tape import Bench, Rate


def bench(rate: Rate, *, lock: int, relock: int, gap: int, meters: frozenset[Meter]) -> Settings:
    """Lengths in frames; drop-frame where there is such a code."""
    machines = Bench(rate, lock=lock, relock=relock, erase_gap=gap, drop_frame=rate is Rate.R29_97)
    run_up = 10 * rate.nominal
    return Settings(bench=machines, pre_roll=lock, source_run_up=run_up, meters=meters)


def least(rate: Rate, *, gap: int = 0) -> Settings:
    second = rate.nominal
    lock = PRE_ROLL[0] * second
    return bench(rate, lock=lock, relock=1, gap=gap * second, meters=frozenset())


def most(rate: Rate, *, gap: int = LONGEST_ERASE_GAP) -> Settings:
    second = rate.nominal
    lock = PRE_ROLL[1] * second
    return bench(rate, lock=lock, relock=lock, gap=gap * second, meters=frozenset(Meter))


LIMITS = {
    "625, least": least(Rate.R25),
    "625, most": most(Rate.R25),
    "625, least run-up and most gap": least(Rate.R25, gap=LONGEST_ERASE_GAP),
    "525, least": least(Rate.R29_97),
    "525, most": most(Rate.R29_97),
    "525, most run-up and no gap": most(Rate.R29_97, gap=0),
}
