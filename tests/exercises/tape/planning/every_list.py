"""The best list of recordings, found by trying every one; for very short tapes.

Nothing here is shared with the planner but the tape model and its judge. What is wanted
of a source can only come from it at the offset at which it is wanted; anything else that
is recorded is black, or in the way.
"""

from collections.abc import Mapping
from typing import NamedTuple

from exercises.tape import (
    Assemble,
    Bench,
    Brief,
    Edit,
    Insert,
    Source,
    Tape,
    Wanted,
    judge,
    record,
)

Reached = dict[object, tuple[Tape, int]]  # tapes, and the fewest frames that lead to them

TRACKS = ((True, False), (False, True), (True, True))


class Best(NamedTuple):
    recordings: int
    frames: int


def best(
    brief: Brief, tape: Tape, sources: Mapping[str, Source], bench: Bench, most: int
) -> Best | None:
    """Fewest recordings, then fewest frames; None if no list of up to ``most`` does it."""
    possible = _recordings(brief, tape, sources)
    for count in range(most + 1):
        reached: Reached = {None: (tape, 0)}
        for made in range(count):
            reached = _one_more(reached, possible, brief, bench, made, count - made - 1)
        frames = [
            frames
            for made, frames in reached.values()
            if not _missing(made, brief, bench) and _fulfils(made, brief, tape, bench)
        ]
        if frames:
            return Best(count, min(frames))
    return None


def _one_more(
    reached: Reached, possible: list[Edit], brief: Brief, bench: Bench, made: int, left: int
) -> Reached:
    after: Reached = {}
    for tape, frames in reached.values():
        for edit in possible:
            next_tape = record(tape, edit, bench, made)
            if len(_missing(next_tape, brief, bench)) <= left:
                key, total = _look(next_tape), frames + edit.out - edit.in_
                if key not in after or after[key][1] > total:
                    after[key] = next_tape, total
    return after


def _fulfils(made: Tape, brief: Brief, before: Tape, bench: Bench) -> bool:
    judgement = judge(brief, made, before=before, bench=bench)
    return not (judgement.differences or judgement.states)


def _recordings(brief: Brief, tape: Tape, sources: Mapping[str, Source]) -> list[Edit]:
    """Every recording of what is wanted, and of black, over every range of the tape."""
    edits: list[Edit] = []
    offsets = sorted({(shot.source, shot.at - shot.in_) for shot in brief.picture + brief.sound})
    for start in range(tape.length):
        for end in range(start + 1, tape.length + 1):
            shots = [(sources[name], start - offset) for name, offset in offsets]
            shots += [(sources["black"], 5)] if "black" in sources else []
            for source, in_ in shots:
                shot = source, in_, in_ + end - start, start
                if in_ >= 0 and _is_recorded(source, in_, shot[2]):
                    edits.append(Assemble(*shot))
                    edits += [Insert(*shot, picture, sound) for picture, sound in TRACKS]
    return edits


def _is_recorded(source: Source, start: int, end: int) -> bool:
    return all(source.take_at(frame) is not None for frame in range(start, end))


def _missing(tape: Tape, brief: Brief, bench: Bench) -> set[tuple[str, int]]:
    """What is wanted, by source and offset, of which some frame is not there; frame by frame."""
    return {
        (shot.source, shot.at - shot.in_)
        for shot in brief.picture + brief.sound
        if not all(_plays(tape, shot, frame, bench) for frame in range(shot.at, shot.end))
    }


def _plays(tape: Tape, shot: Wanted, frame: int, bench: Bench) -> bool:
    track = tape.picture if shot.track == "picture" else tape.sound
    run, pulses = track.at(frame), tape.control.at(frame)
    if run is None or pulses is None or frame < pulses.start + bench.relock:
        return False
    offset = run.start - run.value.frame
    return run.value.source == shot.source and offset == shot.at - shot.in_ and run.value.settled


def _look(tape: Tape) -> object:
    tracks = (tape.picture, tape.sound)
    copies = tuple((track.runs, tuple(track.causes)) for track in tracks)
    return tape.control.runs, tuple(tape.control.causes), copies
