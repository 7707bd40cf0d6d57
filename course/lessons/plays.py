"""What a track of a tape plays cleanly, frame by frame: worked out apart from `play`."""

from exercises.tape import Bench, Laid, Tape, Track

Content = tuple[str, int] | None  # a source and its frame


def plays(tape: Tape, bench: Bench, track: str) -> list[Content]:
    """What a track plays cleanly, frame by frame."""
    shown: list[Content] = [None] * tape.length
    for pulses in tape.control.runs:
        for frame in range(pulses.start + bench.relock, pulses.end):
            run = side(tape, track).at(frame)
            if run is not None and run.value.settled:
                shown[frame] = (run.value.source, run.tail(frame).value.frame)
    return shown


def side(tape: Tape, track: str) -> Track[Laid]:
    return {"picture": tape.picture, "sound": tape.sound}[track]
