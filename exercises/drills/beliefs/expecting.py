"""What somebody with given beliefs expects of a tape."""

from collections.abc import Collection

from exercises.drills.beliefs.belief import Belief, always, over_blank_tape
from exercises.drills.beliefs.marking import bridged, one_frame_more, spoilt_joint
from exercises.drills.beliefs.playing import pulses_under_all, pulses_under_sound
from exercises.drills.beliefs.recording import (
    both_tracks,
    clean_end,
    closed_hole,
    laid_pulses,
    picked_tracks,
    pushed_along,
    ragged_end,
)
from exercises.drills.beliefs.run_ups import black_for_nothing, by_the_pre_roll, takes_joined
from exercises.drills.beliefs.trial import Trial
from exercises.drills.setting.change import Mode
from exercises.tape import Bench, Tape, record
from exercises.tape.by_hand import in_phase, with_runs
from exercises.tape.recording import copied

ANY = tuple(Mode)
INSERTS = ANY[1:]

# The most particular first: where several explain an answer, the first one is named.
BELIEFS: dict[str, Belief] = {
    belief.id: belief
    for belief in (
        Belief("black-is-blank", ANY, before=black_for_nothing),
        Belief("insert-takes-both", INSERTS[:2], taken=both_tracks),
        Belief("out-is-last-frame", ANY, taken=one_frame_more),
        Belief("touching-takes-share-pulses", ANY, taken=takes_joined),
        Belief("pre-roll-makes-run-up", ANY, made_up=by_the_pre_roll),
        Belief(
            "sound-needs-no-pulses",
            (Mode.INSERT_SOUND,),
            recorder_locked=over_blank_tape,
            played=pulses_under_sound,
        ),
        Belief("insert-lays-pulses", INSERTS, before=laid_pulses),
        Belief("assemble-picks-tracks", (Mode.ASSEMBLE,), after=picked_tracks),
        Belief("assemble-ends-clean", (Mode.ASSEMBLE,), after=clean_end),
        Belief("gap-heals", ANY, before=closed_hole),
        Belief("late-is-safer", (Mode.ASSEMBLE,), before=bridged, after=spoilt_joint),
        Belief("no-source-run-up", ANY, player_locked=always),
        Belief("no-master-run-up", ANY, recorder_locked=always),
        Belief("insert-pushes-along", INSERTS, after=pushed_along),
        Belief("insert-ends-ragged", INSERTS, after=ragged_end),
        Belief(
            "plays-without-pulses",
            INSERTS,
            recorder_locked=over_blank_tape,
            played=pulses_under_all,
        ),
    )
}

# Those by which a recording may seem to give what it doesn't, where the pre-roll is no longer
# than what a machine needs. By the others it gives no more than it does.
PROMISING = tuple(
    belief
    for belief in BELIEFS.values()
    if belief.id
    not in (
        "black-is-blank",
        "insert-takes-both",
        "late-is-safer",
        "out-is-last-frame",
        "pre-roll-makes-run-up",
    )
)


def recorded(trial: Trial, beliefs: Collection[str] = ()) -> Tape:
    """The master after the attempt, by the rules or as somebody with these beliefs expects it."""
    held = [each for each in BELIEFS.values() if each.id in beliefs and trial.mode in each.modes]
    for belief in held:
        trial = belief.taken(trial)
    before = trial.master
    for belief in held:
        before = belief.before(trial, before)
    tape = record(before, trial.edit, trial.bench)
    tape = locked(trial, held, before, tape)
    for belief in held:
        tape = belief.after(trial, before, tape)
    return tape


def as_played(tape: Tape, bench: Bench, beliefs: Collection[str] = ()) -> Tape:
    """A tape with such pulses as would make it play as somebody with these beliefs expects.

    Up to `relock` frames of pulses are added ahead of what lies without any, so that it
    does not roll.
    """
    for belief in BELIEFS.values():
        if belief.id in beliefs and belief.played:
            tape = belief.played(tape, bench)
    return tape


def locked(trial: Trial, held: Collection[Belief], before: Tape, tape: Tape) -> Tape:
    """The copy as steady as those machines make it that nobody expects to be locked anyhow.

    Where the recorder is, an assemble's pulses run on from any that lie before it.
    """
    edit, bench = trial.edit, trial.bench
    player = any(belief.player_locked(trial) for belief in held)
    recorder = any(belief.recorder_locked(trial) for belief in held)
    needed = bench.lock - max((belief.made_up(trial) for belief in held), default=0)
    if not (player or recorder or needed < bench.lock):
        return tape
    recorder = recorder or before.run_up(edit.at) >= needed
    run_ups = [] if player else [edit.source.run_up(edit.in_)]
    run_ups += [] if recorder else [before.run_up(edit.at)]
    missing = max(0, needed - min(run_ups, default=needed))
    laid = list(copied(edit, unsettled=missing, relock=bench.relock))
    tape = with_runs(tape, trial.mode.tracks, edit.at, edit.end, laid)
    return run_on(before, tape, edit.at) if recorder and trial.mode is Mode.ASSEMBLE else tape


def run_on(before: Tape, tape: Tape, at: int) -> Tape:
    """New pulses from a frame on in phase with any before it."""
    old, new = before.control.at(at - 1), tape.control.at(at)
    return in_phase(tape, old.start, new.end) if old and new else tape
