"""A shot that is wanted, or that an earlier edit laid."""

from collections.abc import Mapping

from exercises.tape.from_json.document_value import DocumentValue
from exercises.worktop.practical import PracticalTake, TrackChoice, WantedShot

TRACKS: dict[str, TrackChoice] = {"both": "both", "picture": "picture", "sound": "sound"}
HOUR = 3600


def read_shot(given: DocumentValue, takes: Mapping[str, PracticalTake]) -> WantedShot:
    """Refuses what lies beyond its take; `line` counts the lines of the take from 1 on."""
    fields = given.known_fields(("take",), ("track", "start", "lasts", "line", "at"))
    take = takes[fields["take"].one_of(takes)]
    at = fields["at"].whole(0, HOUR) if "at" in fields else None
    track = TRACKS[fields["track"].one_of(TRACKS)] if "track" in fields else "both"
    if "line" in fields:
        line = fields["line"].whole(1, max(1, len(take.lines)))
        if not take.lines:
            fields["line"].refuse("names a line of a take in which nothing is said")
        return WantedShot(take=take.name, track=track, line=line, at=at)
    start = fields["start"].whole(0, take.lasts - 1) if "start" in fields else 0
    if "lasts" not in fields:
        given.refuse("says neither how long it lasts nor which line it is")
    lasts = fields["lasts"].whole(1, take.lasts - start)
    return WantedShot(take=take.name, track=track, start=start, lasts=lasts, at=at)
