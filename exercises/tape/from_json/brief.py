"""What is asked of a session: a brief, the pace of the work, a plan."""

from bisect import bisect_right
from collections.abc import Collection, Iterator, Mapping
from operator import attrgetter

from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.ranges import read_range
from exercises.tape.judging import Brief, Kept, Pace, Wanted
from exercises.tape.rate import Rate
from exercises.tape.tape import Side, TrackName

BRIEF = ("picture", "sound", "tolerance", "untouched", "highest_generation", "black", "after")
SHOT = ("source", "in", "out", "at")
PACE = ("pre_roll", "post_roll", "set_up", "change", "shuttle")
TRACKS: Mapping[str, TrackName] = {
    "picture": "picture",
    "sound": "sound",
    "control": "control",
}


def read_brief(given: DocumentValue, known: Collection[str], length: int) -> Brief:
    """``known`` is what can be wanted: the source tapes, and what is on the master."""
    fields = given.known_fields((), BRIEF)
    tolerance = fields["tolerance"].whole() if "tolerance" in fields else 0
    picture, sound = (
        tuple(_shots(fields[side], side, tolerance, known, length)) if side in fields else ()
        for side in ("picture", "sound")
    )
    untouched = fields["untouched"].items() if "untouched" in fields else ()
    highest = fields["highest_generation"].whole(1) if "highest_generation" in fields else None
    return Brief(
        picture,
        sound,
        tuple(_kept(item, {"picture": picture, "sound": sound}, length) for item in untouched),
        highest_generation=highest,
        black=_black(fields["black"], known) if "black" in fields else Brief().black,
    )


def read_after(given: DocumentValue, edits: int) -> int:
    """How many of the edits had been made before the brief was given."""
    fields = given.fields()
    return fields["after"].whole(0, edits) if "after" in fields else 0


def read_pace(given: DocumentValue, rate: Rate) -> Pace:
    usual = Pace.default(rate)
    fields = given.known_fields((), PACE)
    return Pace(
        **{
            key: fields[key].whole(1 if key == "shuttle" else 0)
            if key in fields
            else getattr(usual, key)
            for key in PACE
        }
    )


def _shots(
    given: DocumentValue, side: Side, tolerance: int, known: Collection[str], length: int
) -> Iterator[Wanted]:
    reached = 0
    for item in given.items():
        fields = item.known_fields(SHOT, ("tolerance",))
        if fields["source"].text() not in known:
            fields["source"].refuse("is neither one of the sources nor on the master")
        first, out = read_range(fields["in"], fields["out"], 0)
        at = fields["at"].whole()
        own = fields["tolerance"].whole() if "tolerance" in fields else tolerance
        shot = Wanted(side, fields["source"].text(), first, out, at, own)
        if at < reached:
            fields["at"].refuse(f"begins before the end of the one before it ({reached})")
        if shot.end > length:
            fields["at"].refuse(f"the shot would run past the end of the tape ({length})")
        reached = shot.end
        yield shot


def _kept(given: DocumentValue, wanted: Mapping[str, tuple[Wanted, ...]], length: int) -> Kept:
    fields = given.known_fields(("track", "start", "end"))
    track = TRACKS[fields["track"].one_of(TRACKS)]
    start, end = read_range(fields["start"], fields["end"], 0)
    if end > length:
        fields["end"].refuse(f"is past the end of the tape ({length})")
    shots = wanted.get(track, ())
    number = bisect_right(shots, start, key=attrgetter("end"))
    if number < len(shots) and shots[number].at < end:
        given.refuse(f"lies over brief.{track}[{number}], which is wanted there")
    return Kept(track, start, end)


def _black(given: DocumentValue, known: Collection[str]) -> str:
    if given.text() not in known:
        given.refuse("is neither one of the sources nor on the master")
    return given.text()
