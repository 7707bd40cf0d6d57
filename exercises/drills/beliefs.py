"""Misconceptions as altered rules of the tape model.

Recording with some of them gives the tape that a believer expects. Their ids are those of
`exercises.mastery.misconceptions`; a belief that is no rule of recording is not here.
"""

from collections.abc import Callable, Collection
from dataclasses import dataclass, replace

from exercises.drills.change import Change, Mode
from exercises.drills.tracks import in_phase, stretch, with_runs
from exercises.drills.wants import SIDES, side
from exercises.tape import Bench, Edit, Laid, Run, Tape, record
from exercises.tape.recording import copied


@dataclass(frozen=True, slots=True)
class Attempt:
    """One change tried in one mode on a master."""

    master: Tape
    change: Change
    mode: Mode
    bench: Bench

    @property
    def edit(self) -> Edit:
        return self.change.edit(self.mode)


@dataclass(frozen=True, slots=True)
class Belief:
    """An altered rule: what it makes of the tape before recording, and after.

    `before` gets the tape so far; `after` gets the tape as it was recorded on and as it
    was left. `modes` are those that it concerns.
    """

    id: str
    modes: tuple[Mode, ...]
    before: Callable[[Attempt, Tape], Tape] = lambda _attempt, tape: tape
    after: Callable[[Attempt, Tape, Tape], Tape] = lambda _attempt, _before, tape: tape


def recorded(attempt: Attempt, beliefs: Collection[str] = ()) -> Tape:
    """The master after the attempt, by the rules or as somebody with these beliefs expects it."""
    held = [each for each in BELIEFS.values() if each.id in beliefs and attempt.mode in each.modes]
    before = attempt.master
    for belief in held:
        before = belief.before(attempt, before)
    tape = record(before, attempt.edit, attempt.bench)
    for belief in held:
        tape = belief.after(attempt, before, tape)
    return tape


def laid_pulses(attempt: Attempt, tape: Tape) -> Tape:
    """Pulses under the recording, in phase with those on either side of it."""
    change = attempt.change
    before, after = tape.control.at(change.at - 1), tape.control.at(change.end)
    start = before.start if before else change.at
    return in_phase(tape, start, after.end if after else change.end)


def pulses_everywhere(_: Attempt, tape: Tape) -> Tape:
    return in_phase(tape, 0, tape.length)


def master_run_up(attempt: Attempt, tape: Tape) -> Tape:
    """As much run-up before the edit as a machine needs."""
    at = attempt.change.at
    start = max(0, at - attempt.bench.lock)
    first, last = tape.control.at(start), tape.control.at(at - 1)
    return in_phase(tape, first.start if first else start, last.end if last else at)


def closed_hole(attempt: Attempt, tape: Tape) -> Tape:
    """A short hole before the recording closed: what lies before it runs on through it."""
    at = attempt.change.at
    runs = [run for run in tape.control.runs if run.end < at]
    if tape.control.at(at - 1) or not runs or at - runs[-1].end > attempt.bench.erase_gap:
        return tape
    start = runs[-1].end
    for track in SIDES:
        held = side(tape, track).at(start - 1)
        running = [Run(start, at, held.tail(start).value)] if held else []
        tape = with_runs(tape, (track,), start, at, running)
    return in_phase(tape, runs[-1].start, at)


def source_run_up(attempt: Attempt, before: Tape, tape: Tape) -> Tape:
    """The copy settled as if the player had had its run-up."""
    edit, bench = attempt.edit, attempt.bench
    missing = max(0, bench.lock - before.run_up(edit.at))
    laid = list(copied(edit, unsettled=missing, relock=bench.relock))
    return with_runs(tape, attempt.mode.tracks, edit.at, edit.end, laid)


def clean_end(attempt: Attempt, before: Tape, tape: Tape) -> Tape:
    """Nothing wiped past the end, and the old pulses running on in phase from there."""
    end, length = attempt.change.end, before.length
    for track in SIDES:
        kept = stretch(side(before, track), end, length)
        tape = with_runs(tape, (track,), end, length, kept)
    control = tape.control.over(end, length, stretch(before.control, end, length), cause=None)
    tape = Tape(length, control, tape.picture, tape.sound)
    new, old = tape.control.at(end - 1), tape.control.at(end)
    return in_phase(tape, new.start, old.end) if new and old else tape


def picked_tracks(attempt: Attempt, before: Tape, tape: Tape) -> Tape:
    """What is not wanted left as it was under the recording."""
    at, end = attempt.change.at, attempt.change.end
    for track in SIDES:
        if track not in attempt.change.tracks:
            kept = stretch(side(before, track), at, end)
            tape = with_runs(tape, (track,), at, end, kept)
    return tape


def pushed_along(attempt: Attempt, before: Tape, tape: Tape) -> Tape:
    """Everything that followed moved later by the length of the recording."""
    at, end, length = attempt.change.at, attempt.change.end, before.length
    shift = end - at
    for track in attempt.mode.tracks:
        moved = [
            Run(run.start + shift, run.end + shift, run.value)
            for run in stretch(side(before, track), at, length - shift)
        ]
        tape = with_runs(tape, (track,), end, length, moved)
    phase = before.control.at(at)
    return in_phase(tape, phase.start, min(phase.end + shift, length)) if phase else tape


def ragged_end(attempt: Attempt, _: Tape, tape: Tape) -> Tape:
    """A disturbance in whatever follows the insert."""
    end = attempt.change.end
    until = min(end + attempt.bench.relock, tape.length)
    for track in attempt.mode.tracks:
        spoilt = [
            run._replace(value=_unsettled(run.value))
            for run in stretch(side(tape, track), end, until)
        ]
        tape = with_runs(tape, (track,), end, until, spoilt)
    return tape


def _unsettled(laid: Laid) -> Laid:
    return replace(laid, settled=False)


ANY = tuple(Mode)
INSERTS = ANY[1:]

# The most particular first: where several explain an answer, the first one is named.
BELIEFS: dict[str, Belief] = {
    belief.id: belief
    for belief in (
        Belief("sound-needs-no-pulses", (Mode.INSERT_SOUND,), before=pulses_everywhere),
        Belief("insert-lays-pulses", INSERTS, before=laid_pulses),
        Belief("assemble-picks-tracks", (Mode.ASSEMBLE,), after=picked_tracks),
        Belief("assemble-ends-clean", (Mode.ASSEMBLE,), after=clean_end),
        Belief("gap-heals", ANY, before=closed_hole),
        Belief("no-source-run-up", ANY, after=source_run_up),
        Belief("no-master-run-up", ANY, before=master_run_up),
        Belief("insert-pushes-along", INSERTS, after=pushed_along),
        Belief("insert-ends-ragged", INSERTS, after=ragged_end),
        Belief("plays-without-pulses", INSERTS, before=pulses_everywhere),
    )
}
