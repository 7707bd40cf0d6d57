"""A shot that is wanted, or that an earlier edit laid."""

from collections.abc import Mapping
from typing import Literal

from exercises.tape.from_json.document_value import DocumentValue, Fields
from exercises.worktop.practical_shot import EarlierEdit, TrackChoice, WantedShot
from exercises.worktop.practical_tape import PracticalTake
from exercises.worktop.reading.tapes import HOUR, TRACK, figures

TRACKS: dict[str, TrackChoice] = {"both": "both", "picture": "picture", "sound": "sound"}
MODES: dict[str, Literal["assemble", "insert"]] = {"assemble": "assemble", "insert": "insert"}
MISMADE = {"tracking": TRACK, "gain": (-600, 600), "late": (-250, 250), "short": (0, 250)}
Takes = Mapping[str, PracticalTake]


def read_shot(given: DocumentValue, takes: Takes) -> WantedShot:
    """Refuses what lies beyond its take; `line` counts the lines of the take from 1 on."""
    optional = ("track", "start", "lasts", "line", "through", "at", "over", "sheet")
    fields = given.known_fields(("take",), optional)
    take = takes[fields["take"].one_of(takes)]
    told = said_of(fields, take) if "line" in fields else shown_of(given, fields, take)
    return WantedShot(
        take=take.name,
        track=TRACKS[fields["track"].one_of(TRACKS)] if "track" in fields else "both",
        over="over" in fields and fields["over"].truth(),
        sheet=fields["sheet"].one_of(takes) if "sheet" in fields else None,
        **told | figures(fields, {"at": (0, HOUR)}),
    )


def shown_of(given: DocumentValue, fields: Fields, take: PracticalTake) -> dict[str, int]:
    if "lasts" not in fields:
        given.refuse("says neither how long it lasts nor which line it is")
    start = fields["start"].whole(0, HOUR) if "start" in fields else 0
    lasts = fields["lasts"].whole(1, HOUR)
    if start + lasts > take.lasts:
        where = f"{start} to {start + lasts} seconds"
        fields["lasts"].refuse(f"wants {where} of take {take.name}, which lasts {take.lasts}")
    return {"start": start, "lasts": lasts}


def said_of(fields: Fields, take: PracticalTake) -> dict[str, int]:
    for key in ("start", "lasts"):
        if key in fields:
            fields[key].refuse("has no place beside a line, which says it")
    if not take.lines:
        fields["line"].refuse(f"names a line, and nothing is said in take {take.name}")
    line = fields["line"].whole(1, len(take.lines))
    return {"line": line} | figures(fields, {"through": (line, len(take.lines))})


def read_earlier(given: DocumentValue, takes: Takes) -> EarlierEdit:
    fields = given.known_fields(("shot", "mode"), MISMADE)
    return EarlierEdit(
        shot=read_shot(fields["shot"], takes),
        mode=MODES[fields["mode"].one_of(MODES)],
        **figures(fields, MISMADE),
    )
