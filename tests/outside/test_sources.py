"""Every check against the outside says where its figures come from."""

import ast
import re
from pathlib import Path

import pytest

HERE = Path(__file__).parent

# Standards bodies, other people's libraries, a paper with its year or volume, or the plain words.
SOURCE = re.compile(
    r"\b(SMPTE|IEC|ISO|ITU-R|EBU|EIA|ANSI|IASA|NIOSH|HSE|WCAG|OneRoster)\b"
    r"|\b(OpenTimelineIO|portion|timecode|auditok|pyloudnorm|scikit-image|colour-science|numpy)\b"
    r"|\bscipy\.|\bRKWard\b|\(\d{4}\)|\b\d{4},? \d+\(\d+\)"
    r"|CCIR|common practice|from memory|derived here",
    re.IGNORECASE,
)
CHECKS = [
    pytest.param(function, id=f"{path.stem}-{function.name}")
    for path in sorted(HERE.glob("test_*.py"))
    for function in ast.parse(path.read_text(encoding="utf-8")).body
    if isinstance(function, ast.FunctionDef) and function.name.startswith("test_")
]


@pytest.mark.parametrize("function", CHECKS)
def test_check_names_its_source(function: ast.FunctionDef) -> None:
    """Common practice, from memory, derived here, or a name that can be looked up."""
    told = " ".join((ast.get_docstring(function) or "").split())

    assert SOURCE.search(told), "its docstring names no source"
