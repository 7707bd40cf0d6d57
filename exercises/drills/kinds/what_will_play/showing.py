"""What a tape shows, stretch by stretch, by the rules or as a believer expects it."""

from collections.abc import Collection
from typing import NamedTuple

from exercises.drills.beliefs import as_played
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.tape import Condition, Passage, passages
from exercises.tape.playback import condition_of

BLANK, NO_LOCK, ROLLS, UNSTEADY, NO_PICTURE, NO_SOUND = (
    "blank",
    "no-lock",
    "rolls",
    "unsteady",
    "no-picture",
    "no-sound",
)

FAULTS = {
    Condition.NO_CONTROL: NO_LOCK,
    Condition.RELOCK: ROLLS,
    Condition.NO_PICTURE: NO_PICTURE,
    Condition.UNSETTLED: UNSTEADY,
    Condition.NO_SOUND: NO_SOUND,
    Condition.UNSETTLED_SOUND: UNSTEADY,
}


class PlayedStretch(NamedTuple):
    """`[start, end)` of a tape; `what` is a fault's name, or `picture|sound` where it plays."""

    start: int
    end: int
    what: str


def showings(visit: Visit, beliefs: Collection[str] = ()) -> list[PlayedStretch]:
    """All that the window shows after the visit; neighbours differ."""
    tape = visit.after(beliefs)
    played = as_played(tape, visit.session.bench, beliefs)
    found: list[PlayedStretch] = []
    for passage in passages(played, *visit.window, relock=visit.session.bench.relock):
        what = _shown(visit, passage, pulsed=tape.control.at(passage.start) is not None)
        if found and found[-1].what == what:
            found[-1] = found[-1]._replace(end=passage.end)
        else:
            found.append(PlayedStretch(passage.start, passage.end, what))
    return found


def _shown(visit: Visit, passage: Passage, *, pulsed: bool) -> str:
    """What is shown; pulses that are not on the tape count only under what is laid."""
    seen, heard = passage.laid("picture"), passage.laid("sound")
    if not (pulsed or seen or heard):
        return BLANK
    condition = condition_of(passage)
    if condition is not Condition.CLEAN or seen is None or heard is None:
        return FAULTS[condition]
    shot = visit.shot(seen.source, seen.frame).picture
    return f"{shot}|{visit.shot(heard.source, heard.frame).sound}"


def at(shown: Collection[PlayedStretch], frame: int) -> str:
    return next(each.what for each in shown if each.start <= frame < each.end)
