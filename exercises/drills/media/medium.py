"""What a question shows beside words: which pictures and sounds, not yet made.

    Medium
     ├── Still    one picture
     ├── Motion   pictures one after another, played when somebody asks for it
     ├── Strip    a picture for each position of a control
     └── Clip     a sound: part of a tape, played

A question keeps them as JSON in `media`, in an order of its own; a page asks for one by
its number. They hold the facts that `rendering` works from and never leave the server.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, ClassVar

from exercises.drills.asks import Json

LARGE, SMALL = (640, 480), (320, 240)

# Not of the picture or the sound itself, so that made ones are kept whatever they are called.
TOLD = {"title", "words"}


@dataclass(frozen=True, kw_only=True)
class Picture:
    """Frame `frame` of a scene (`signal.footage`), under a look, on a display.

    `look` holds those fields of `signal.picture.Look` that differ from its defaults; `lines`
    is 525 or 625. `mouth` is how far a face's mouth is open, 0 to 1.
    """

    scene: str
    frame: int
    look: Mapping[str, Any] = field(default_factory=dict)
    display: str = "monitor"
    mouth: float | None = None


@dataclass(frozen=True, kw_only=True)
class Medium:
    """`title` names it on the page and `words` say exactly what is seen or heard.

    Neither names a fault. A strip has one of `words` for each position.
    """

    form: ClassVar[str]

    title: str
    words: tuple[str, ...]

    def as_json(self) -> Json:
        """Made from JSON, lists for tuples: copying field by field takes five times as long."""
        held: Json = json.loads(json.dumps({"form": self.form, **vars(self)}, default=vars))
        return held


@dataclass(frozen=True, kw_only=True)
class Still(Medium):
    form: ClassVar[str] = "still"

    picture: Picture
    size: tuple[int, int] = LARGE


@dataclass(frozen=True, kw_only=True)
class Motion(Medium):
    """`rate` is in pictures a second."""

    form: ClassVar[str] = "motion"

    pictures: tuple[Picture, ...]
    rate: float
    size: tuple[int, int] = SMALL


@dataclass(frozen=True, kw_only=True)
class PictureStrip(Medium):
    """One below the other in rows of `across`."""

    form: ClassVar[str] = "strip"

    pictures: tuple[Picture, ...]
    across: int = 1
    size: tuple[int, int] = SMALL


@dataclass(frozen=True, kw_only=True)
class SourceSound:
    """What is heard of a source tape: lines by name from `begin` ms on, `pause` ms apart.

    `room` is what is heard around them: "room" or "harbour". `worn` says that the tape’s edge
    is, and from where on in ms its dips are counted (`signal.sound.worn`).
    """

    lines: tuple[str, ...] = ()
    begin: int = 0
    pause: int = 600
    room: str = "room"
    worn: int | None = None


@dataclass(frozen=True, kw_only=True)
class SoundClip(Medium):
    """Frames `start` to `end` of the master of a session document, played.

    `sounds` has what is on each of its sources.
    """

    form: ClassVar[str] = "clip"

    session: Json
    sounds: Mapping[str, SourceSound]
    start: int
    end: int


def media(*shown: Medium) -> list[Json]:
    """What a question keeps: as it comes back from where it is stored."""
    return [medium.as_json() for medium in shown]


def facts(medium: Json) -> Json:
    """All that the picture or the sound depends on."""
    return {name: value for name, value in medium.items() if name not in TOLD}


def shape(medium: Json) -> tuple[int, int]:
    """How many pictures there are across and down."""
    pictures: Sequence[Any] = medium.get("pictures", (None,))
    across: int = medium.get("across", len(pictures))
    return across, -(-len(pictures) // across)
