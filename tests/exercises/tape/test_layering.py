"""The tape model is the lowest layer: standard library only."""

import ast
import sys
from pathlib import Path

import exercises.tape

ROOT = Path(exercises.tape.__file__).parent


def imported(path: Path) -> set[str]:
    """The modules that a file imports, by full name."""
    modules: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            modules |= {name.name for name in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path.name} imports relatively"
            assert node.module is not None
            modules.add(node.module)
    return modules


def strays(modules: set[str]) -> set[str]:
    return {
        module
        for module in modules
        if module.partition(".")[0] not in sys.stdlib_module_names
        and not f"{module}.".startswith("exercises.tape.")
    }


def test_tape_model_imports_the_standard_library_only() -> None:
    files = sorted(ROOT.rglob("*.py"))

    assert len(files) > 10
    assert {path.name: strays(imported(path)) for path in files} == {
        path.name: set() for path in files
    }


def test_stray_import_is_seen() -> None:
    assert strays(
        {"json", "exercises.tape.runs", "exercises.tapes", "exercises", "numpy.core"}
    ) == {
        "exercises.tapes",
        "exercises",
        "numpy.core",
    }
