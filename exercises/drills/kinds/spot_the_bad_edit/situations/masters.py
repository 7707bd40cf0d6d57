"""Masters before the first edit, in words too, and the mode that lays a film on them."""

from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.change import Mode


def new_tape(work: EditsWork) -> Mode:
    """A leader on a new tape; the film is laid by assemble."""
    scene = work.scene
    scene.record(0, start := scene.seconds(10, 25), "leader")
    work.start = start
    work.story = scene.draw.pick(
        (
            f"The edit master was a new tape with a leader of black as far as {scene.code(start)}.",
            f"On a new tape black had been recorded as far as {scene.code(start)}, as a leader.",
        )
    )
    return Mode.ASSEMBLE


def prepared_tape(work: EditsWork) -> Mode:
    """Black along the whole tape; the film is laid by insert."""
    scene = work.scene
    scene.record(0, scene.length, "black")
    work.start = scene.seconds(10, 25)
    work.story = scene.draw.pick(
        (
            "The edit master had been prepared: black along the whole tape, recorded in one go.",
            "Before the first edit, black was recorded from the start of the tape to its end.",
        )
    )
    return Mode.INSERT_BOTH


def used_tape(work: EditsWork) -> Mode:
    """An old exercise along the whole tape, not needed; the film is laid by assemble over it."""
    scene = work.scene
    scene.record(0, scene.length, "old exercise")
    work.start = scene.seconds(10, 25)
    work.story = scene.draw.pick(
        (
            "The tape was full, end to end, of an old exercise that nobody needs.",
            "An old exercise had been recorded along the whole tape. It may go.",
        )
    )
    return Mode.ASSEMBLE


def jointed_tape(work: EditsWork, joint: int) -> Mode:
    """Black in two goes: the pulses begin anew at the joint."""
    scene = work.scene
    scene.record(0, joint, "black")
    scene.record(joint, scene.length, "black")
    work.story = scene.draw.pick(
        (
            f"The edit master had been prepared with black, in two goes: the first ended at "
            f"{scene.code(joint)}, and the second began there.",
            f"Black had been recorded along the whole tape, but at {scene.code(joint)} "
            "the recorder was stopped and started again.",
        )
    )
    return Mode.INSERT_BOTH


def either_tape(work: EditsWork) -> Mode:
    return work.scene.draw.pick((new_tape, prepared_tape))(work)
