"""The sums that are asked: each makes a `Total` from a scene, or None where it can't."""

from collections.abc import Callable

from exercises.drills.kinds.sums_on_the_clock.situations import (
    beforehand,
    codes,
    marks,
    recordings,
    run_ups,
    spans,
)
from exercises.drills.kinds.sums_on_the_clock.total import Total
from exercises.drills.setting.scene import Scene

Situation = Callable[[Scene], Total | None]

SITUATIONS: tuple[Situation, ...] = (
    codes.where_a_copy_ends,
    codes.pictures_lost,
    codes.place_by_the_counter,
    codes.counter_of_another_day,
    run_ups.earliest_places,
    run_ups.tape_for_takes,
    spans.film_with_a_cutaway,
    spans.film_with_a_new_end,
    spans.rest_of_the_next_shot,
    spans.end_of_a_mend,
    spans.across_a_hole,
    recordings.where_the_wiping_ends,
    recordings.first_frame_untouched,
    recordings.shots_to_lay_again,
    marks.out_after_a_last_frame,
    marks.end_of_two_shots,
    marks.mark_that_may_be_out,
    beforehand.take_after_a_take,
    beforehand.longer_pre_roll,
    beforehand.black_and_bars,
)
