"""Mistakes that can be made in every block that shows something."""

import pytest

from course.lessons.blocks.register import FIGURES, OF_MAPS, read_block
from course.lessons.problems import LessonProblem

every_figure = pytest.mark.parametrize("kind", [*FIGURES, *OF_MAPS])


def problem(kind: str, toml: str) -> tuple[int, str]:
    with pytest.raises(LessonProblem) as refused:
        read_block(kind, toml, 10, {})
    return refused.value.line, refused.value.problem


@every_figure
def test_caption_is_needed(kind: str) -> None:
    line, sentence = problem(kind, 'name = "a"\ntitle = "A"\nnonsense = 1')

    assert (line, sentence.partition(";")[0]) == (13, "nonsense is not known here")


@every_figure
def test_block_that_is_not_toml_is_told_with_its_line(kind: str) -> None:
    assert problem(kind, 'name = "a"\ntitle =') == (12, "This is not TOML: Invalid value.")
