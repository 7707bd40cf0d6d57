"""The packages that the site is installed with: which ones, and at which version each."""

import re
import tomllib
from collections.abc import Iterator
from importlib.metadata import PackageNotFoundError, requires, version
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[1]
SCRIPTS = [path for path in (ROOT / ".ci").iterdir() if not path.suffix]
LINES = (ROOT / ".ci" / "constraints.txt").read_text().splitlines()
# Some packages have one line for older Pythons, and another for newer ones.
CONSTRAINTS = {
    canonicalize_name(each.name): each
    for each in map(Requirement, LINES)
    if not each.marker or each.marker.evaluate()
}
FILE = tomllib.loads((ROOT / "pyproject.toml").read_text())
NAMED = [
    Requirement(line)
    for part in (
        FILE["build-system"]["requires"],
        FILE["project"]["dependencies"],
        *FILE["project"]["optional-dependencies"].values(),
    )
    for line in part
]


def constrained(name: str) -> str:
    """The one version that the constraints let in; empty where they have none."""
    found = CONSTRAINTS.get(canonicalize_name(name))
    return str(found.specifier).removeprefix("==") if found else ""


def brought(asked: Requirement) -> Iterator[Requirement]:
    """What a package, at the version of the constraints, brings with it."""
    try:
        if version(asked.name) != constrained(asked.name):
            return
    except PackageNotFoundError:
        return
    for each in map(Requirement, requires(asked.name) or []):
        extras = asked.extras or {""}
        if not each.marker or any(each.marker.evaluate({"extra": extra}) for extra in extras):
            yield each


def all_installed() -> set[str]:
    found: dict[str, Requirement] = {}
    waiting = list(NAMED)
    while waiting:
        asked = waiting.pop()
        if str(asked) not in found:
            found[str(asked)] = asked
            waiting += brought(asked)
    return {each.name for each in found.values()}


@pytest.mark.parametrize("line", LINES)
def test_constraint_is_one_version_and_nothing_else(line: str) -> None:
    assert re.fullmatch(r"[a-z0-9-]+==[0-9][0-9a-z.]*( ; [a-z_]+ [<>=!]+ '[\w.]+')?", line)


@pytest.mark.parametrize("asked", NAMED, ids=str)
def test_version_of_the_constraints_is_one_that_is_allowed(asked: Requirement) -> None:
    assert constrained(asked.name) in asked.specifier


def test_what_packages_bring_is_constrained_too() -> None:
    assert sorted(name for name in all_installed() if not constrained(name)) == []


@pytest.mark.parametrize("asked", NAMED, ids=str)
def test_package_has_a_lowest_version(asked: Requirement) -> None:
    assert {each.operator for each in asked.specifier} & {">=", "~="}


def test_readme_installs_nothing_without_the_constraints() -> None:
    told = re.findall(r"pip install [^&`]*--editable", (ROOT / "README.md").read_text())

    assert len(told) == 3
    assert all("--constraint .ci/constraints.txt" in command for command in told)


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_script_names_nobodys_folder(script: Path) -> None:
    """Neither a home nor a place that one distribution has chosen: another machine has others."""
    _, *lines = script.read_text().splitlines()  # the first names the shell

    assert not re.search(
        r"\$HOME|~/|(?<![\w.\"}])/(usr|home|opt|root|srv|var|tmp)\b", "\n".join(lines)
    )
