"""How the machines were set when something was recorded."""

from exercises.drills.judging import rules
from exercises.drills.kinds.set_tracking.version import BAND
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.debrief.made import EditMade, StepDone
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.hands import first_of_tapes
from exercises.worktop.debrief.rubric.line import NOTHING_MADE, Judged, each_edit
from exercises.worktop.debrief.tone import tone_in_words, tone_off
from exercises.worktop.debrief.wording import edits_of, steps_of, tracks_of
from exercises.worktop.meters import levels_made
from exercises.worktop.worktop import Worktop


def tracking(run: Proceedings) -> Judged:
    """Right within the band of the tracking drill, and looked at since the tape was put in."""
    off = [made for made in run.made if abs(tracking_error(run, made)) > BAND]
    unseen = [made for made in run.made if made not in off and not _checked(run, made)]
    if not run.made:
        return NOTHING_MADE
    told = [f"{_error(run, made)} off at {edits_of([made])}" for made in off]
    told += [f"not looked at since the tape was put in: {edits_of(unseen)}"] if unseen else []
    if told:
        listed = "; ".join(told)
        return Judged(False, f"{listed[:1].upper()}{listed[1:]}.")
    turned = [step.number for step in run.steps if step.name == "tracking"]
    by = f", turned at {steps_of(turned)}" if turned else ""
    return Judged(True, f"At every edit within {BAND} % of a track{by}.")


def tracking_error(run: Proceedings, made: EditMade) -> int:
    """Percent of a track at its edit in."""
    player = made.step.before.player
    return Adjusted(player, made.tape, run.bench.rate).tracking_at(made.edit.in_)


def _error(run: Proceedings, made: EditMade) -> str:
    return f"{abs(tracking_error(run, made))} % of a track"


def _checked(run: Proceedings, made: EditMade) -> bool:
    return any(step.name == "tracking" or _plays(step) for step in run.since_loaded(made))


def _plays(step: StepDone) -> bool:
    return step.name == "play" and bool(step.arguments["machine"] == "player")


def recorder(run: Proceedings) -> Judged:
    off = [made for made in run.made if made.step.before.recorder.tracking]
    return each_edit(run.made, off, "made with the recorder’s tracking at its fixed position")


def levels(run: Proceedings) -> Judged:
    """The meters read before the first edit from a tape, levels then within limits, tone true."""
    firsts = [made for made in first_of_tapes(run) if _has_levels(made)]
    untrue = [made for made in run.made if tone_off(made)]
    if not firsts:
        return Judged(None, "No edit of yours was of a tape that has levels to set.")
    unread = [made for made in firsts if not _read(run, made)]
    told_of = [*unread, *untrue]
    beyond = [made for made in firsts if made not in told_of and not _within(run, made)]
    told = [
        f"no meter read on {made.tape.name} between putting it in and {edits_of([made])}"
        for made in unread
    ]
    told += [f"{tone_in_words(made)} at {edits_of([made])}" for made in untrue]
    told += [f"levels beyond their limits at {edits_of(beyond)}"] if beyond else []
    if told:
        listed = "; ".join(told)
        rule = rules.LINE_UP if untrue else None
        return Judged(False, f"{listed[:1].upper()}{listed[1:]}.", rule)
    read = [step.number for made in firsts for step in _readings(run, made)[-1:]]
    return Judged(True, f"Read from the meters at {steps_of(read)}, and within their limits.")


def _has_levels(made: EditMade) -> bool:
    return levels_made(_at_the_take(made)) is not None


def _at_the_take(made: EditMade) -> Worktop:
    return made.step.before.with_player(at=made.edit.in_)


def _read(run: Proceedings, made: EditMade) -> bool:
    return bool(_readings(run, made))


def _readings(run: Proceedings, made: EditMade) -> list[StepDone]:
    """Where the player ran over something that moves the meters, a take or a tone."""
    return [step for step in run.since_loaded(made) if _plays(step) and _moved_a_meter(step)]


def _moved_a_meter(step: StepDone) -> bool:
    start, end = step.before.player.at, step.after.player.at
    tape = step.before.source
    takes = [take for take in tape.takes if take.start < end and take.end > start] if tape else []
    return any(
        levels_made(step.before.with_player(at=max(take.start, start))) is not None
        for take in takes
    )


def _within(run: Proceedings, made: EditMade) -> bool:
    found = levels_made(_at_the_take(made))
    if found is None:
        return True
    limits, (white, sound) = run.bench.limits, found
    right = {
        "picture": limits.flat_picture <= white <= limits.clipped_picture,
        "sound": limits.weak_sound <= sound <= limits.distorted_sound,
    }
    return all(right[track] for track in tracks_of(made.edit))
