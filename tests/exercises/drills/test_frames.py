"""The slow machines agree with the tape model on what the drills' sessions leave."""

import pytest

from exercises.drills.register import KINDS
from exercises.tape import read_edit_session
from tests.exercises.drills.frames import threaded


@pytest.mark.parametrize("slug", [slug for slug in KINDS if "session" in KINDS[slug].make(0).key])
@pytest.mark.parametrize("seed", range(6))
def test_slow_machines_agree_with_the_model(slug: str, seed: int) -> None:
    document = KINDS[slug].make(seed).key["session"]

    slow = threaded(document)
    tape = read_edit_session(document).recorded()

    for name in ("picture", "sound"):
        laid: list[tuple[str, int, bool] | None] = [None] * tape.length
        for run in getattr(tape, name).runs:
            value = run.value
            for frame in range(run.start, run.end):
                laid[frame] = (value.source, value.frame + frame - run.start, value.settled)
        assert laid == getattr(slow, name)
    starts = [
        frame
        for frame, phase in enumerate(slow.control)
        if phase and (frame == 0 or slow.control[frame - 1] != phase)
    ]
    assert [run.start for run in tape.control.runs] == starts
