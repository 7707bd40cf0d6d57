"""Every example in SESSION.md, run."""

import json
import re
from pathlib import Path

import pytest

import exercises.tape
from exercises.tape import DocumentError, answer_text
from exercises.tape.from_json import bench

PAGE = (Path(exercises.tape.__file__).parent / "SESSION.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"^```(\w+)\n(.*?)^```$", PAGE, re.MULTILINE | re.DOTALL)
EXAMPLES = [
    pytest.param(document, kind, expected, id=f"example-{number}")
    for number, ((_, document), (kind, expected)) in enumerate(
        zip(BLOCKS[::2], BLOCKS[1::2], strict=True), start=1
    )
]


def shown_part(value: object, shown: object) -> object:
    """The parts of an answer that the page shows."""
    if isinstance(value, dict) and isinstance(shown, dict):
        return {key: shown_part(value.get(key), part) for key, part in shown.items()}
    return value


FIGURES = [
    *bench.BENCH,
    *(f"limiter.{name}" for name in bench.LIMITER),
    *(f"automatic_gain.{name}" for name in bench.AUTOMATIC_GAIN),
    *bench.LIMITS,
]


@pytest.mark.parametrize("name", FIGURES)
def test_page_names_every_figure_of_a_bench(name: str) -> None:
    assert f"`{name}`" in PAGE


def test_page_has_an_example_of_every_part() -> None:
    assert len(EXAMPLES) == 20


@pytest.mark.parametrize(("document", "kind", "expected"), EXAMPLES)
def test_example_has_the_answer_that_the_page_shows(
    document: str, kind: str, expected: str
) -> None:
    if kind == "text":
        with pytest.raises(DocumentError) as refusal:
            answer_text(document.encode())
        assert str(refusal.value) == expected.strip()
    else:
        shown = json.loads(expected)
        assert shown_part(json.loads(answer_text(document.encode())), shown) == shown
