"""The slow machines agree with the tape model on what the drills' sessions leave."""

from exercises.drills.asks import Json
from exercises.drills.register import KINDS
from exercises.tape import Tape, read_edit_session
from tests.exercises.drills.frames import Copy, threaded
from tests.exercises.drills.made import made

SEEDS = range(3)


def test_slow_machines_agree_with_the_model() -> None:
    on_tape = [kind for kind in KINDS.values() if "session" in made(kind, 0).key]

    assert len(on_tape) > 10
    for kind in on_tape:
        for seed in SEEDS:
            assert agrees(made(kind, seed).key["session"]), (kind.slug, seed)


def agrees(document: Json) -> bool:
    """Whether both leave the same picture, the same sound, and pulses from the same places."""
    slow = threaded(document)
    tape = read_edit_session(document).recorded()

    alike = all(laid(tape, name) == getattr(slow, name) for name in ("picture", "sound"))
    starts = [
        frame
        for frame, phase in enumerate(slow.control)
        if phase and (frame == 0 or slow.control[frame - 1] != phase)
    ]
    return alike and [run.start for run in tape.control.runs] == starts


def laid(tape: Tape, track: str) -> list[Copy | None]:
    found: list[Copy | None] = [None] * tape.length
    for run in getattr(tape, track).runs:
        value = run.value
        for frame in range(run.start, run.end):
            found[frame] = (value.source, value.frame + frame - run.start, value.settled)
    return found
