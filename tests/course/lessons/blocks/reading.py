"""Reading one block by itself, right or wrong."""

import pytest

from course.lessons.blocks.figure import Figure
from course.lessons.blocks.register import read_block
from course.lessons.problems import LessonProblem

COMMON = 'name = "it"\ntitle = "What it shows"\ncaption = "Look."\n'


def figure(kind: str, toml: str) -> Figure:
    """The block, begun on line 1 of a file; `toml` begins on line 5."""
    block = read_block(kind, COMMON + toml, 1)
    assert isinstance(block, Figure)
    return block


def refusal(kind: str, toml: str) -> tuple[int, str]:
    """The line of `toml`, from 1, and what is wrong there; 0 is the block itself."""
    with pytest.raises(LessonProblem) as refused:
        read_block(kind, COMMON + toml, 1)
    return max(0, refused.value.line - 4), refused.value.problem
