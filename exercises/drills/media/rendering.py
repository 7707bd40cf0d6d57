"""Pictures and sounds made from what `media` says of them.

>>> still = {"form": "still", "size": [64, 48], "picture": {"scene": "black", "frame": 0}}
>>> render(still).type
'image/jpeg'
"""

from collections.abc import Callable, Iterable
from typing import Any, NamedTuple

from exercises.drills.asks import Json
from exercises.drills.media.medium import shape
from exercises.signal.arrays import Picture, Size
from exercises.signal.displays import DISPLAYS
from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.motion import jpeg, strip
from exercises.signal.picture import Look
from exercises.signal.sound.harbour import harbour
from exercises.signal.sound.hearing import Hearing
from exercises.signal.sound.noise import room_tone
from exercises.signal.sound.soundtrack import Sound, Soundtrack
from exercises.signal.sound.wav import streamed
from exercises.signal.sound.worn import Worn
from exercises.signal.speech.reel import reel
from exercises.tape import read_edit_session

REVISION = 4  # raise it when the same facts give another picture or sound

ROOMS: dict[str, Callable[[], Sound]] = {"room": room_tone, "harbour": harbour}


class Rendered(NamedTuple):
    """A file, and what type of file it is."""

    content: bytes
    type: str


def render(medium: Json) -> Rendered:
    if medium["form"] == "clip":
        return Rendered(b"".join(clip(medium)), "audio/wav")
    width, height = medium["size"]
    if medium["form"] == "still":
        return Rendered(jpeg(picture(medium["picture"], (width, height))), "image/jpeg")
    pictures = medium["pictures"]
    drawn = (picture(each, (width, height)) for each in pictures)
    across, _ = shape(medium)
    return Rendered(strip(drawn, len(pictures), across=across).jpeg, "image/jpeg")


def picture(spec: Json, size: Size) -> Picture:
    clean = frame(spec["scene"], spec["frame"], size, mouth=spec.get("mouth"))
    show = DISPLAYS[spec.get("display", "monitor")]
    return show(clean, look(spec.get("look", {})), spec["frame"])


def look(fields: Json) -> Look:
    lines = Lines(fields.get("lines", Lines.L525.value))
    return Look(**{**fields, "lines": lines})


def clip(spec: Json) -> Iterable[bytes]:
    session = read_edit_session(spec["session"])
    tracks = {name: soundtrack(sound) for name, sound in spec["sounds"].items()}
    hearing = Hearing(session.recorded(), session.bench, tracks, spec["start"], spec["end"])
    return streamed(hearing.stream(), hearing.length)


def soundtrack(sound: dict[str, Any]) -> Soundtrack:
    said = reel(*sound["lines"], begin=sound["begin"], pause=sound["pause"])
    room, worn = ROOMS[sound["room"]](), sound.get("worn")
    if worn is None:
        return Soundtrack(said, room)
    return Soundtrack(Worn(said, worn), Worn(room, worn))
