"""What a tape shows, stretch by stretch, by the rules or as a believer expects it."""

from collections.abc import Collection
from itertools import pairwise
from typing import NamedTuple

from exercises.drills.beliefs import as_played
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.tape import Tape

BLANK, NO_LOCK, ROLLS, UNSTEADY, NO_PICTURE, NO_SOUND = (
    "blank",
    "no-lock",
    "rolls",
    "unsteady",
    "no-picture",
    "no-sound",
)


class Showing(NamedTuple):
    """`[start, end)` of a tape; `what` is a fault's name, or `picture|sound` where it plays."""

    start: int
    end: int
    what: str


def showings(visit: Visit, beliefs: Collection[str] = ()) -> list[Showing]:
    """All that the window shows after the visit; neighbours differ."""
    tape = visit.after(beliefs)
    played = as_played(tape, visit.session.bench, beliefs)
    found: list[Showing] = []
    for start, end in pairwise(_cuts(visit, played)):
        what = _shown(visit, played, start, pulsed=tape.control.at(start) is not None)
        if found and found[-1].what == what:
            found[-1] = found[-1]._replace(end=end)
        else:
            found.append(Showing(start, end, what))
    return found


def _cuts(visit: Visit, tape: Tape) -> list[int]:
    start, end = visit.window
    cuts = {start, end}
    for pulses in tape.control.runs:
        steady = pulses.start + visit.session.bench.relock
        cuts.update((pulses.start, min(steady, pulses.end), pulses.end))
    for track in (tape.picture, tape.sound):
        for run in track.runs:
            cuts.update((run.start, run.end))
    return sorted(cut for cut in cuts if start <= cut <= end)


def _shown(visit: Visit, tape: Tape, frame: int, *, pulsed: bool) -> str:
    """What a frame shows; pulses that are not on the tape count only under what is laid."""
    pulses = tape.control.at(frame)
    picture, sound = tape.picture.at(frame), tape.sound.at(frame)
    if not (pulsed or picture or sound):
        return BLANK
    if pulses is None:
        return NO_LOCK
    if frame < pulses.start + visit.session.bench.relock:
        return ROLLS
    if picture is None:
        return NO_PICTURE
    if not picture.value.settled:
        return UNSTEADY
    if sound is None:
        return NO_SOUND
    if not sound.value.settled:
        return UNSTEADY
    seen, heard = picture.tail(frame).value, sound.tail(frame).value
    shot = visit.shot(seen.source, seen.frame).picture
    return f"{shot}|{visit.shot(heard.source, heard.frame).sound}"


def at(shown: Collection[Showing], frame: int) -> str:
    return next(each.what for each in shown if each.start <= frame < each.end)
