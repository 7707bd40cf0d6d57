"""The kinds of drill, by slug: one line a kind."""

from exercises.drills.kind import Kind
from exercises.drills.kinds import (
    bench_practical,
    can_this_bench,
    care_and_safety,
    choose_the_mode,
    enough_run_up,
    free_answer,
    levels_on_paper,
    mend_it,
    put_in_order,
    read_the_bench,
    set_picture_level,
    set_skew,
    set_sound_level,
    set_tracking,
    spot_by_ear,
    spot_by_eye,
    spot_the_bad_edit,
    sums_on_the_clock,
    watch_it_drift,
    what_will_play,
    which_generation,
)
from exercises.drills.setting.settings import Settings

KINDS: dict[str, Kind] = {
    module.KIND.slug: module.KIND
    for module in (
        choose_the_mode,
        spot_the_bad_edit,
        put_in_order,
        care_and_safety,
        can_this_bench,
        levels_on_paper,
        read_the_bench,
        sums_on_the_clock,
        spot_by_eye,
        spot_by_ear,
        set_tracking,
        set_skew,
        set_picture_level,
        set_sound_level,
        watch_it_drift,
        what_will_play,
        which_generation,
        enough_run_up,
        mend_it,
        free_answer,
    )
}


# Asked only where somebody set it: not among the drills that everybody may take.
SET_ONLY: dict[str, Kind] = {bench_practical.KIND.slug: bench_practical.KIND}


def kind(slug: str) -> Kind:
    """The kind of this slug; KeyError where there is none."""
    return SET_ONLY[slug] if slug in SET_ONLY else KINDS[slug]


def not_at(settings: Settings) -> set[str]:
    """The kinds that need a meter which a bench doesn't have."""
    return {slug for slug, kind in KINDS.items() if not kind.is_at(settings)}
