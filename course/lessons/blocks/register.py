"""The blocks that are written as TOML, by the word that begins their fence."""

from collections.abc import Callable

from course.lessons.blocks.checklist import Checklist, read_checklist
from course.lessons.blocks.figure import Figure
from course.lessons.blocks.given import Given
from course.lessons.blocks.levels import read_levels
from course.lessons.blocks.signal_path import read_signal_path
from course.lessons.diagrams import read_diagram
from course.lessons.lesson import Diagram

FIGURES: dict[str, Callable[[Given], Figure]] = {
    "signal-path": read_signal_path,
    "levels": read_levels,
}
BLOCKS = ("tape-map", *FIGURES, "checklist")


def read_block(kind: str, source: str, line: int) -> Diagram | Figure | Checklist:
    """The block of that kind that begins on `line`."""
    if kind == "tape-map":
        return read_diagram(source, line)
    if kind == "checklist":
        return read_checklist(source, line)
    return FIGURES[kind](Given.block(source, line))
