"""What a lesson claims, put to the tape model.

A claim of the head names one of `CHECKS` and what to call it with. The answer
must be the claim's `expect`. Where a check looks at a diagram, it is one of the lesson's
own, by name, so that the sentence and the drawing beside it can't part ways.
"""

from collections.abc import Callable

from course.lessons import adjusted, care, depicted, drawn, faulty, figures, levelled, modes, plans
from course.lessons.lesson import Answer, Claim, Lesson

Check = Callable[..., Answer]

CHECKS: dict[str, Check] = {
    "air": care.air,
    "all-clean": drawn.all_clean,
    "automatic-gain": levelled.automatic_gain,
    "automatic-reach": levelled.automatic_reach,
    "automatic-white": levelled.automatic_white_of,
    "bar-level": levelled.bar_level,
    "behind-the-clock": plans.behind_the_clock,
    "bench-figure": figures.bench_figure,
    "bench-minutes": plans.bench_minutes,
    "care-figure": care.care_figure,
    "chain-snr": figures.chain_snr,
    "copies-cost": figures.copies_cost,
    "edit-length": drawn.edit_length,
    "ends-at": plans.ends_at,
    "fault-after": faulty.fault_after,
    "fault-kinds": faulty.fault_kinds,
    "fault-length": faulty.fault_length,
    "fault-measured": faulty.fault_measured,
    "faults-by": drawn.faults_by,
    "faults-from": levelled.faults_from,
    "figure-says": depicted.figure_says,
    "first-edit-in": plans.first_edit_in,
    "frames-in": figures.frames_in,
    "frames-unnoticed": depicted.frames_unnoticed,
    "generation-at": drawn.generation_at,
    "head-passes": care.head_passes,
    "hidden-edge": adjusted.hidden_edge,
    "hole-length": drawn.hole_length,
    "labels-left-out": plans.labels_left_out,
    "laid-at": drawn.laid_at,
    "laid-length": drawn.laid_length,
    "level-drawn": depicted.level_drawn,
    "limit": levelled.limit,
    "limit-in-tenths": levelled.limit_in_tenths,
    "limited": levelled.limited,
    "looped-level": levelled.looped_level,
    "meter-reads": adjusted.meter_reads,
    "noise-grade": figures.noise_grade,
    "lip-sync-noticed": depicted.lip_sync_noticed,
    "pace": plans.pace,
    "pause-gain": levelled.pause_gain,
    "peak-burst": levelled.peak_burst,
    "peak-maximum": levelled.peak_maximum,
    "pulse-spacing": figures.pulse_spacing,
    "pulses-a-second": figures.pulses_a_second,
    "recorded-over": drawn.recorded_over,
    "right-modes": modes.right_modes,
    "run-up": drawn.run_up,
    "running-time": plans.running_time,
    "scale-place": depicted.scale_place,
    "skew-step": adjusted.skew_step,
    "skew-width": adjusted.skew_width,
    "sound-pauses": depicted.sound_pauses,
    "sound-words": depicted.sound_words,
    "spacing-loss": adjusted.spacing_loss,
    "state-at": drawn.state_at,
    "state-length": drawn.state_length,
    "stripe-width": figures.stripe_width,
    "tape-changes": plans.tape_changes,
    "course-code": depicted.course_code,
    "course-lasts": depicted.course_lasts,
    "course-locked": depicted.course_locked,
    "course-run-up": depicted.course_run_up,
    "track-unchanged": drawn.track_unchanged,
    "tracking-loss": adjusted.tracking_loss,
    "tracking-shows": adjusted.tracking_shows,
    "tracking-streaks": adjusted.tracking_streaks,
    "usable-length": plans.usable_length,
    "usual-bars": levelled.usual_bars,
    "vu-burst": levelled.vu_burst,
    "vu-limit": levelled.vu_limit,
    "white-after": levelled.white_after,
}


class ClaimProblem(ValueError):
    """A claim that can't be put to the model, or that the model does not confirm."""


def confirm(lesson: Lesson, claim: Claim) -> None:
    """Raise ClaimProblem, with a sentence, unless the model answers what is expected."""
    check = CHECKS.get(claim.check)
    if check is None:
        raise ClaimProblem(f"There is no check “{claim.check}”; there are {', '.join(CHECKS)}.")
    try:
        answer = check(lesson, **claim.given)
    except (LookupError, TypeError, ValueError) as error:
        raise ClaimProblem(f"The claim can't be checked: {error}.") from error
    if answer != claim.expect or type(answer) is not type(claim.expect):
        raise ClaimProblem(
            f"“{claim.text}”: expected {claim.expect!r}, the tape model says {answer!r}."
        )
