"""What a track of a tape plays cleanly, frame by frame."""

from exercises.tape import SIDES, Bench, Side, Tape, passages

Content = tuple[str, int] | None  # a source and its frame


def side_named(name: str) -> Side:
    """Picture or sound, as a lesson names it; KeyError for anything else."""
    sides: dict[str, Side] = {side: side for side in SIDES}
    return sides[name]


def plays(tape: Tape, bench: Bench, side: Side) -> list[Content]:
    """What one of picture and sound plays cleanly, frame by frame."""
    shown: list[Content] = []
    for passage in passages(tape, relock=bench.relock, sides=(side,)):
        laid, frames = passage.laid(side), range(passage.end - passage.start)
        if laid and laid.settled and passage.pulses and not passage.rolls:
            shown += [(laid.source, laid.frame + frame) for frame in frames]
        else:
            shown += [None for _ in frames]
    return shown
