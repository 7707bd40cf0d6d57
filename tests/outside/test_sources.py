"""Every check against the outside says where its figures come from."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

HERE = Path(__file__).parent

# Standards bodies, other people's libraries, a paper with its year or volume, or the plain words.
SOURCE = re.compile(
    r"\b(SMPTE|IEC|ISO|ITU-R|EBU|EIA|ANSI|IASA|NIOSH|HSE|WCAG|OneRoster)\b"
    r"|\b(OpenTimelineIO|portion|timecode|auditok|pyloudnorm|scikit-image|colour-science|numpy)\b"
    r"|\bscipy\.|\bRKWard\b|\(\d{4}\)|\b\d{4},? \d+\(\d+\)"
    r"|CCIR|common practice|from memory|derived here",
    re.IGNORECASE,
)


def test_checks_name_their_sources() -> None:
    """Common practice, from memory, derived here, or a name that can be looked up."""
    told = dict(checks())

    assert len(told) > 100
    assert [name for name, docstring in told.items() if not SOURCE.search(docstring)] == []


def checks() -> Iterator[tuple[str, str]]:
    """File and name of each check, and what its docstring says."""
    for path in sorted(HERE.glob("test_*.py")):
        for function in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(function, ast.FunctionDef) and function.name.startswith("test_"):
                docstring = ast.get_docstring(function) or ""
                yield f"{path.stem}: {function.name}", " ".join(docstring.split())
