"""No page and no lesson speaks in a form that belongs to one program, or to one book.

Each entry is a form that once stood here, or that its like would bring back, with what is said
instead. A word of the trade is none of them.
"""

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
READ = sorted(
    path
    for folder, kinds in (
        ("templates", {".html", ".txt"}),
        ("course/lessons", {".md", ".toml"}),
        ("static/js", {".js"}),
    )
    for path in (ROOT / folder).rglob("*")
    if path.suffix in kinds
)
FORBIDDEN = {
    r"\btimelines?\b": "the course of an edit, the tape map",
    r"^\+\+\+$": "a fenced block",
    r"front matter": "the head of a lesson",
    r"extra breath": "stray breath",
    r"along one edge": "at one rim",
    r"along the other edge": "at the opposite rim",
    r"picture, or sound, or both": "one track alone, or picture and sound together",
    r"before anything happens": "in front of what you need",
    r"\bright (answers )?in a row": "held",
    r"\bclips? bins?\b": "a tape in its case",
    r"\bplayheads?\b": "the place on the tape",
    r"\bscrub(bing)?\b": "to wind and look",
    r"\b(jog|shuttle) (wheel|dial)\b": "the transport",
    r"\bstreaks? of days\b|\bbadges?\b|\blevel up\b": "what is known, in words",
    r"\bflash ?cards?\b": "a question",
}


@pytest.mark.parametrize("form", FORBIDDEN)
def test_form_stands_nowhere(form: str) -> None:
    found = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in READ
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if re.search(form, line, re.IGNORECASE)
    ]

    assert found == [], f"say {FORBIDDEN[form]}"


def test_pages_and_lessons_are_read() -> None:
    suffixes = {path.suffix for path in READ}

    assert {".html", ".md", ".toml", ".js"} <= suffixes
    assert len(READ) > 150
