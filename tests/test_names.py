"""One word for one thing: a class that several rooms know shares its name with no other."""

import ast
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[1]
# The row of an instructor's bench, and the machines of it as the tape model knows them.
TWO_OF = {"Bench"}


def modules() -> dict[str, ast.Module]:
    """What the site is made of, by dotted name; migrations keep the names of their day."""
    files = [path for top in ("course", "exercises") for path in (ROOT / top).rglob("*.py")]
    return {
        ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__"): ast.parse(
            path.read_text(encoding="utf-8")
        )
        for path in files
        if "migrations" not in path.parts
    }


def room(module: str) -> tuple[str, ...]:
    """Two names deep; in the drills three, and a kind is a room of its own."""
    parts = tuple(module.split("."))
    if parts[:3] == ("exercises", "drills", "kinds"):
        return parts[:4]
    return parts[: 3 if parts[:2] == ("exercises", "drills") else 2]


def taken_from_other_rooms(module: str, tree: ast.Module) -> Iterator[str]:
    for found in ast.walk(tree):
        if not isinstance(found, ast.ImportFrom) or not found.module:
            continue
        if found.module.startswith(("course.", "exercises.")) and room(found.module) != room(
            module
        ):
            yield from (alias.name for alias in found.names)


def test_class_that_crosses_rooms_has_a_name_of_its_own() -> None:
    house = modules()
    classes = defaultdict(list)
    for name, tree in house.items():
        for found in tree.body:
            if isinstance(found, ast.ClassDef):
                classes[found.name].append(name)
    crossing = {
        name for module, tree in house.items() for name in taken_from_other_rooms(module, tree)
    }

    shared = {name: where for name, where in classes.items() if len(where) > 1}
    assert {name: where for name, where in shared.items() if name in crossing - TWO_OF} == {}
