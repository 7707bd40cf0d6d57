"""The house's order of layers: an import never points up it. The lowest three are pure."""

import ast
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

# Each layer, and what it may import beside the standard library and itself.
LAYERS: dict[str, tuple[str, ...]] = {
    "exercises.tape": (),
    "exercises.signal": ("exercises.tape", "numpy", "PIL"),
    "exercises.drills": ("exercises.tape", "exercises.signal", "exercises.mastery"),
    "exercises.mastery": ("exercises.tape", "exercises.signal", "exercises.drills"),
}

# All of exercises that a module of course may import.
BELOW_COURSE = tuple(LAYERS)


def imported(path: Path) -> set[str]:
    """The modules that a file imports, by full name, also inside functions."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {name.name for name in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert not node.level, f"{path} imports relatively"
            found |= {f"{node.module}.{name.name}" for name in node.names}
    return found


def within(module: str, packages: tuple[str, ...]) -> bool:
    return any(f"{module}.".startswith(f"{package}.") for package in packages)


def strays(layer: str, modules: set[str]) -> set[str]:
    """What a layer imports and may not."""
    allowed = (layer, *LAYERS[layer])
    return {
        module
        for module in modules
        if module.partition(".")[0] not in sys.stdlib_module_names and not within(module, allowed)
    }


def files(package: str) -> list[Path]:
    return sorted((ROOT / package.replace(".", "/")).rglob("*.py"))


@pytest.mark.parametrize("layer", LAYERS)
def test_pure_layer_imports_nothing_above_it(layer: str) -> None:
    found = {str(path.relative_to(ROOT)): strays(layer, imported(path)) for path in files(layer)}

    assert {path: modules for path, modules in found.items() if modules} == {}


def test_course_imports_the_pure_layers_of_exercises_only() -> None:
    found = {
        str(path.relative_to(ROOT)): {
            module
            for module in imported(path)
            if within(module, ("exercises",)) and not within(module, BELOW_COURSE)
        }
        for path in files("course")
    }

    assert {path: modules for path, modules in found.items() if modules} == {}


def test_stray_import_is_seen() -> None:
    modules = {
        "json",
        "exercises.tape.play",
        "exercises.drills.kind.Kind",
        "exercises.models.Attempt",
        "exercises.tapes",
        "django.db.models",
        "course.settings",
    }

    assert strays("exercises.drills", modules) == {
        "exercises.models.Attempt",
        "exercises.tapes",
        "django.db.models",
        "course.settings",
    }
    assert strays("exercises.tape", modules) == {
        "exercises.drills.kind.Kind",
        "exercises.models.Attempt",
        "exercises.tapes",
        "django.db.models",
        "course.settings",
    }
