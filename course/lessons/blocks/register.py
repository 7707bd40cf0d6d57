"""The blocks that are written as TOML, by the word that begins their fence."""

from collections.abc import Callable, Mapping

from course.lessons.blocks.checklist import Checklist, read_checklist
from course.lessons.blocks.edit_course import read_edit_course
from course.lessons.blocks.figure import Figure
from course.lessons.blocks.given import Given
from course.lessons.blocks.head_and_track import read_head_and_track
from course.lessons.blocks.levels import read_levels
from course.lessons.blocks.picture import read_picture
from course.lessons.blocks.signal_path import read_signal_path
from course.lessons.blocks.sound import read_sound
from course.lessons.diagrams import read_diagram
from course.lessons.lesson import Diagram

FIGURES: dict[str, Callable[[Given], Figure]] = {
    "signal-path": read_signal_path,
    "head-and-track": read_head_and_track,
    "levels": read_levels,
    "edit-course": read_edit_course,
}
# Those that show, or let be heard, what is on a tape map further up.
OF_MAPS: dict[str, Callable[[Given, Mapping[str, Diagram]], Figure]] = {
    "picture": read_picture,
    "sound": read_sound,
}
BLOCKS = ("tape-map", *FIGURES, *OF_MAPS, "checklist")


def read_block(
    kind: str, source: str, line: int, maps: Mapping[str, Diagram]
) -> Diagram | Figure | Checklist:
    """The block of that kind that begins on `line`; `maps` are those before it, by name."""
    if kind == "tape-map":
        return read_diagram(source, line)
    if kind == "checklist":
        return read_checklist(source, line)
    given = Given.block(source, line)
    return FIGURES[kind](given) if kind in FIGURES else OF_MAPS[kind](given, maps)
