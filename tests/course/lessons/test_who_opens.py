"""Who may open a machine is said in one way: licensed people, for cleaning too."""

import re
from pathlib import Path

import pytest

from course.lessons.shelf import shelf
from exercises.demo.cast import BENCH
from exercises.drills.kinds.care_and_safety.cases import CASES
from exercises.drills.kinds.care_and_safety.rules import COVERS

SHELF = shelf()
README = (Path(__file__).parents[3] / "README.md").read_text(encoding="utf-8")
OTHERWISE = re.compile(r"\b(trained|qualified|authorised|shown (how|what))\b", re.IGNORECASE)


def lesson(slug: str) -> str:
    found = SHELF.find(slug)
    assert found is not None
    return found.text()


def glossary() -> str:
    return " ".join(term.means for term in SHELF.glossary.terms)


@pytest.mark.parametrize(
    "text",
    [
        *[lesson(each) for each in ("setting-up-the-recorder", "your-first-bench-day")],
        README,
        COVERS.text,
        f"licensed people: {SHELF.glossary.named['licensed people'].means}",
    ],
    ids=["lesson 5", "lesson 14", "README", "rule", "glossary"],
)
def test_licensed_people_open_a_machine_for_cleaning_too(text: str) -> None:
    said = " ".join(text.split())

    assert "licensed people" in said
    assert re.search(r"opens? a machine[^.]*\bcleaning|cleaning[^.]*\b(too|either)", said)


def test_nobody_else_is_said_to_open_one() -> None:
    texts = [each.text() for each in SHELF.lessons]
    texts += [" ".join([case.story, *case.whys, *case.whys.values()]) for case in CASES]
    texts += [README, glossary(), str(BENCH["local_rules"])]

    assert [found[0] for text in texts for found in OTHERWISE.finditer(text)] == []
