"""The kinds of drill, by slug: one line a kind."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.bench_practical import BENCH_PRACTICAL
from exercises.drills.kinds.can_this_bench import CAN_THIS_BENCH
from exercises.drills.kinds.care import CARE
from exercises.drills.kinds.choose_mode import CHOOSE_MODE
from exercises.drills.kinds.enough_run_up import ENOUGH_RUN_UP
from exercises.drills.kinds.free_answer import FREE_ANSWER
from exercises.drills.kinds.mend_it import MEND_IT
from exercises.drills.kinds.paper_levels import PAPER_LEVELS
from exercises.drills.kinds.put_in_order import PUT_IN_ORDER
from exercises.drills.kinds.read_the_bench import READ_THE_BENCH
from exercises.drills.kinds.set_picture_level import SET_PICTURE_LEVEL
from exercises.drills.kinds.set_skew import SET_SKEW
from exercises.drills.kinds.set_sound_level import SET_SOUND_LEVEL
from exercises.drills.kinds.set_tracking import SET_TRACKING
from exercises.drills.kinds.spot_by_ear import SPOT_BY_EAR
from exercises.drills.kinds.spot_by_eye import SPOT_BY_EYE
from exercises.drills.kinds.spot_described import SPOT_DESCRIBED
from exercises.drills.kinds.sums import SUMS
from exercises.drills.kinds.watch_it_drift import WATCH_IT_DRIFT
from exercises.drills.kinds.what_plays import WHAT_PLAYS
from exercises.drills.kinds.which_generation import WHICH_GENERATION
from exercises.drills.setting.settings import Settings

KINDS: dict[str, Kind] = {
    kind.slug: kind
    for kind in (
        CHOOSE_MODE,
        SPOT_DESCRIBED,
        PUT_IN_ORDER,
        CARE,
        CAN_THIS_BENCH,
        PAPER_LEVELS,
        READ_THE_BENCH,
        SUMS,
        SPOT_BY_EYE,
        SPOT_BY_EAR,
        SET_TRACKING,
        SET_SKEW,
        SET_PICTURE_LEVEL,
        SET_SOUND_LEVEL,
        WATCH_IT_DRIFT,
        WHAT_PLAYS,
        WHICH_GENERATION,
        ENOUGH_RUN_UP,
        MEND_IT,
        FREE_ANSWER,
    )
}


# Asked only where somebody set it: not among the drills that everybody may take.
SET_ONLY: dict[str, Kind] = {BENCH_PRACTICAL.slug: BENCH_PRACTICAL}


def kind(slug: str) -> Kind:
    """The kind of this slug; KeyError where there is none."""
    return SET_ONLY[slug] if slug in SET_ONLY else KINDS[slug]


def not_at(settings: Settings) -> set[str]:
    """The kinds that need a meter which a bench doesn't have."""
    return {slug for slug, kind in KINDS.items() if not kind.is_at(settings)}
