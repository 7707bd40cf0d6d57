"""A block `picture`: one picture, or two beside one another.

    scene, frame   of `exercises.signal.footage`
    look           what differs from a well-made copy, as `exercises.signal.picture.Look` has it
    display        see `seen.DISPLAYS`
    rate           25 or 29.97: the line system
    panels         [{line, …}]: two pictures, each with what differs in it

or, of a tape map further up,

    map            its name
    at             the frame
    edits          after so many edits; without it, after all
    shows          {source = scene}
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, ClassVar

from django.urls import reverse

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from course.lessons.blocks.seen import DISPLAYS, SCENES, told
from course.lessons.lesson import Diagram
from course.lessons.showing import after
from course.made import name_of
from exercises.drills.asks import Json
from exercises.drills.media.medium import LARGE, Picture, Still, media
from exercises.drills.media.seen import BLACK, Footage, Screen
from exercises.signal.lines import Lines
from exercises.tape import Rate

RATES = ("25", "29.97")
LAST_FRAME = 100_000
WELL_MADE = {"snr": 43.0, "copies": 2}  # second generation
# The least and the most of each thing that a look can say.
LOOKS: dict[str, tuple[float, float]] = {
    "source": (0, 150),
    "gain": (-20, 20),
    "pedestal": (-20, 20),
    "snr": (10, 60),
    "copies": (0, 12),
    "tracking": (-100, 100),
    "dirt": (0, 40),
    "skew": (-20, 20),
    "hold": (1, 100),
    "dropouts": (0, 40),
    "settling": (0, 1),
    "adrift": (0, 1),
}
WHOLE = ("copies",)
OF_A_SCENE = ("scene", "frame", "look", "rate")
OF_A_MAP = ("map", "at", "edits", "shows")


@dataclass(frozen=True, kw_only=True)
class Panel:
    """One picture: what it is made from, the line over it in a pair, and what it shows."""

    line: str
    spec: Json
    words: tuple[str, ...]

    @property
    def url(self) -> str:
        return reverse("lesson-shown", args=[name_of(self.spec)])

    @property
    def alternative(self) -> str:
        return " ".join(self.words)

    @property
    def size(self) -> tuple[int, int]:
        width, height = self.spec["size"]
        return width, height


@dataclass(frozen=True, kw_only=True)
class PictureFigure(Figure):
    part: ClassVar[str] = "picture"
    in_details: ClassVar[bool] = False

    panels: tuple[Panel, ...]

    def sentences(self) -> list[str]:
        return [sentence for panel in self.panels for sentence in panel.words]

    def texts(self) -> list[str]:
        return [*super().texts(), *(panel.line for panel in self.panels if panel.line)]

    def media(self) -> list[Json]:
        return [panel.spec for panel in self.panels]


def read_picture(given: Given, maps: Mapping[str, Diagram]) -> PictureFigure:
    own = OF_A_MAP if "map" in given else OF_A_SCENE
    given.only(*KEYS, *own, "display", "panels")
    panels = list(given.tables("panels"))
    if panels and len(panels) != 2:
        raise given.problem("panels", "There are two panels, or none.")
    for panel in panels:
        panel.only("line", "display", *own)
        panel.text("line")
    told_of = [given.and_(panel) for panel in panels] or [given]
    return PictureFigure(**common(given), panels=tuple(_panel(each, maps) for each in told_of))


def _panel(given: Given, maps: Mapping[str, Diagram]) -> Panel:
    picture = _of_a_map(given, maps) if "map" in given else _of_a_scene(given)
    words = tuple(told(picture))
    (spec,) = media(Still(title=given.text("title"), words=words, picture=picture, size=LARGE))
    return Panel(line=given.text("line", default=""), spec=spec, words=words)


def _of_a_scene(given: Given) -> Picture:
    rate = Rate(given.one_of("rate", RATES, default="25"))
    return Picture(
        scene=given.one_of("scene", tuple(SCENES)),
        frame=given.whole("frame", 0, LAST_FRAME, default=0),
        look={**WELL_MADE, **_look(given.table("look")), "lines": Lines.of(rate).total},
        display=given.one_of("display", tuple(DISPLAYS), default="monitor"),
    )


def _look(given: Given) -> dict[str, Any]:
    given.only(*LOOKS, "blank")
    for key, value in given.values.items():
        if key == "blank" and isinstance(value, bool):
            continue
        least, most = LOOKS.get(key, (1, 0))
        kind = int if key in WHOLE else int | float
        if not isinstance(value, kind) or isinstance(value, bool) or not least <= value <= most:
            allowed = "true or false" if key == "blank" else f"from {least:g} to {most:g}"
            raise given.problem(key, f"{key} in look is {allowed}.".replace("-", "−"))
    return dict(given.values)


def _of_a_map(given: Given, maps: Mapping[str, Diagram]) -> Picture:
    session = map_of(given, maps).session
    made = given.whole("edits", 0, len(session.edits), default=len(session.edits))
    at = given.whole("at", 0, session.master.length - 1)
    shows = {
        source: Footage(shows.one_of(source, tuple(SCENES)))
        for shows in [given.table("shows")]
        for source in shows.values
    }
    screen = Screen(after(session, made).recorded(), session.bench, shows)
    source = screen.seeing.at(at).source
    if source not in (None, BLACK, *shows):
        raise given.problem("shows", f"shows has no scene for “{source}”, which is seen there.")
    seen = screen.at(at)
    display = given.one_of("display", tuple(DISPLAYS), default="monitor")
    return Picture(scene=seen.scene, frame=seen.frame, look=seen.look, display=display)


def map_of(given: Given, maps: Mapping[str, Diagram]) -> Diagram:
    name = given.text("map")
    if name not in maps:
        raise given.problem("map", f"There is no tape map “{name}” further up.")
    return maps[name]
