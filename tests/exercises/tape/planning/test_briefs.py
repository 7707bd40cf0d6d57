"""Five briefs and the best way to each, one of them none."""

import json
from pathlib import Path
from typing import Any

import pytest

from exercises.tape import simulate

BRIEFS = sorted((Path(__file__).parents[1] / "data" / "briefs").glob("*.json"))


def read(path: Path) -> Any:
    return json.loads(path.read_text(encoding="utf-8"))


def test_there_are_five_briefs_and_one_is_impossible() -> None:
    assert len(BRIEFS) == 5
    assert ["none" in read(path)["plan"] for path in BRIEFS].count(True) == 1


@pytest.mark.parametrize("path", BRIEFS, ids=lambda path: path.stem)
def test_brief_has_the_plan_that_is_written_down(path: Path) -> None:
    asked = read(path)

    answer = simulate(asked["document"])

    assert answer["plan"] == asked["plan"]


@pytest.mark.parametrize("path", BRIEFS[:4], ids=lambda path: path.stem)
def test_plan_made_as_edits_fulfils_the_brief(path: Path) -> None:
    document = read(path)["document"]
    plan: Any = simulate(document)["plan"]

    document["edits"] += [planned["edit"] for planned in plan["recordings"]]
    judgement: Any = simulate(document)["judgement"]

    assert judgement["fulfilled"] is True
    assert judgement["economy"] == plan["economy"]
