"""Reading one block by itself, right or wrong."""

from collections.abc import Mapping

import pytest

from course.lessons.blocks.figure import Figure
from course.lessons.blocks.register import read_block
from course.lessons.lesson import Diagram
from course.lessons.problems import LessonProblem

Maps = Mapping[str, Diagram]
NONE: Maps = {}
COMMON = 'name = "it"\ntitle = "What it shows"\ncaption = "Look."\n'


def figure(kind: str, toml: str, maps: Maps = NONE) -> Figure:
    """The block, begun on line 1 of a file; `toml` begins on line 5."""
    block = read_block(kind, COMMON + toml, 1, maps)
    assert isinstance(block, Figure)
    return block


def refusal(kind: str, toml: str, maps: Maps = NONE) -> tuple[int, str]:
    """The line of `toml`, from 1, and what is wrong there; 0 is the block itself."""
    with pytest.raises(LessonProblem) as refused:
        read_block(kind, COMMON + toml, 1, maps)
    return max(0, refused.value.line - 4), refused.value.problem
