import ast
from pathlib import Path

import course.lessons

FOLDER = Path(course.lessons.__file__).parent
PURE = ("exercises.tape", "exercises.signal", "exercises.drills", "exercises.mastery")


def test_lessons_import_only_the_pure_layers_of_exercises() -> None:
    imported = {
        node.module
        for path in FOLDER.rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom) and node.module
    }

    assert {name for name in imported if name.startswith("exercises")} != set()
    assert {
        name for name in imported if name.startswith("exercises") and not name.startswith(PURE)
    } == set()
