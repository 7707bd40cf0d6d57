"""What an edit leaves on the master."""

from collections.abc import Iterator

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit, Insert
from exercises.tape.errors import EditRefused
from exercises.tape.history import LINED_UP_TAKE, PLAINLY, History
from exercises.tape.machines import WELL_ADJUSTED
from exercises.tape.runs import Run
from exercises.tape.source import Take
from exercises.tape.tape import Tape
from exercises.tape.track import PULSES, Laid


def record(tape: Tape, edit: Edit, bench: Bench, index: int | None = None) -> Tape:
    """The tape after the edit; ``index`` is kept as the cause of what it laid or wiped.

    Where the source has no recording, what is laid is nothing: it replaces what was
    there. Raises EditRefused for an edit that does not fit the tape.
    """
    refuse_misfit(tape, edit)
    laid = list(copied(edit, unsettled=unsettled(tape, edit, bench), relock=bench.relock))
    if isinstance(edit, Insert):
        return _insert(tape, edit, laid, index)
    return _assemble(tape, edit, laid, bench, index)


def refuse_misfit(tape: Tape, edit: Edit) -> None:
    """Raise EditRefused unless the edit is possible on a tape of this length."""
    if not 0 <= edit.in_ < edit.out:
        raise EditRefused(f"The edit in ({edit.in_}) must come before the edit out ({edit.out}).")
    if edit.at < 0 or edit.end > tape.length:
        raise EditRefused(
            f"The recording from {edit.at} to {edit.end} does not fit a tape of {tape.length}."
        )
    if isinstance(edit, Insert) and not (edit.picture or edit.sound):
        raise EditRefused(
            "An insert records at least one of picture and sound; this one records nothing."
        )


def unsettled(tape: Tape, edit: Edit, bench: Bench) -> int:
    """How many frames from the edit in are recorded before both machines are locked.

    In either mode the shorter of the two run-ups decides.
    """
    return max(0, bench.lock - min(tape.run_up(edit.at), edit.source.run_up(edit.in_)))


def copied(edit: Edit, *, unsettled: int, relock: int) -> Iterator[Run[Laid]]:
    """The runs that the edit copies, where they come to lie on the master.

    The first ``unsettled`` frames are not settled. A take that begins strictly inside
    the edit makes the player jump: its first ``relock`` frames are not settled either.
    """
    shift = edit.at - edit.in_
    for take in edit.source.takes_in(edit.in_, edit.out):
        made = how_made(edit, take)
        start, end = max(take.start, edit.in_), min(take.end, edit.out)
        rolls_until = take.start + relock if take.start > edit.in_ else 0
        settles = min(max(start, edit.in_ + unsettled, rolls_until), end)
        for first, last, settled in ((start, settles, False), (settles, end, True)):
            if first < last:
                laid = Laid(edit.source.name, first, take.generation + 1, settled, made)
                yield Run(first + shift, last + shift, laid)


def how_made(edit: Edit, take: Take) -> History:
    """How what the edit copies from this take is recorded."""
    if edit.machines is WELL_ADJUSTED and take.carried is LINED_UP_TAKE and not take.sync:
        return PLAINLY
    return History(
        take.carried,
        edit.machines,
        since=edit.in_ if edit.machines.wanders else None,
        together=take.start if take.sync else None,
    )


def _assemble(
    tape: Tape, edit: Edit, laid: list[Run[Laid]], bench: Bench, index: int | None
) -> Tape:
    """All three tracks, then the erase gap.

    With enough run-up on the master the pulses run on in phase: the run that ends at
    the edit in grows. What is left of an older run beyond the erase gap is a run of its
    own from there on, also when the gap is 0: an assemble never ends cleanly into
    something.
    """
    wiped_to = min(edit.end + bench.erase_gap, tape.length)
    run_up = tape.run_up(edit.at)
    phase_from = edit.at - run_up if run_up >= bench.lock else edit.at
    pulses = [Run(phase_from, edit.end, PULSES)]
    return Tape(
        tape.length,
        tape.control.over(edit.at, wiped_to, pulses, cause=index),
        tape.picture.over(edit.at, wiped_to, laid, cause=index),
        tape.sound.over(edit.at, wiped_to, laid, cause=index),
    )


def _insert(tape: Tape, edit: Insert, laid: list[Run[Laid]], index: int | None) -> Tape:
    """The chosen tracks only. Pulses are never touched and nothing is wiped."""
    picture, sound = tape.picture, tape.sound
    if edit.picture:
        picture = picture.over(edit.at, edit.end, laid, cause=index)
    if edit.sound:
        sound = sound.over(edit.at, edit.end, laid, cause=index)
    return Tape(tape.length, tape.control, picture, sound)
