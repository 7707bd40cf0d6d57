"""The units for systemd: what they run is there, and the README refers to them."""

import shutil
import subprocess
import sys
from configparser import ConfigParser
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
UNITS = {path.name: path for path in (ROOT / "course" / "deploy").glob("*.service")}
EACH = pytest.mark.parametrize("name", UNITS)
README = (ROOT / "README.md").read_text()


def section(name: str, heading: str) -> dict[str, str]:
    unit = ConfigParser(strict=False, interpolation=None)
    unit.optionxform = str  # type: ignore[assignment,method-assign]
    unit.read(UNITS[name])
    return dict(unit[heading])


def test_units_are_those_that_the_readme_names() -> None:
    assert set(UNITS) == {"run-up.service", "run-up-housekeeping.service"}
    assert [name for name in UNITS if f"course/deploy/{name}" not in README] == []


def test_site_serves_as_the_readme_says() -> None:
    command = section("run-up.service", "Service")["ExecStart"]

    assert "gunicorn course.wsgi --workers 2 --threads 8 --no-control-socket" in README
    assert "gunicorn course.wsgi --workers 2 --threads 8 --no-control-socket" in command


def test_options_of_the_server_are_its_own(tmp_path: Path) -> None:
    _, *options = section("run-up.service", "Service")["ExecStart"].split()
    done = subprocess.run(
        [sys.executable, "-m", "gunicorn", "--check-config", *options], cwd=ROOT, timeout=60
    )

    assert done.returncode == 0


def test_housekeeping_starts_with_the_site_and_stops_with_it() -> None:
    housekeeping = "run-up-housekeeping.service"

    assert housekeeping in section("run-up.service", "Unit")["Wants"].split()
    assert section(housekeeping, "Unit")["PartOf"] == "run-up.service"
    assert section(housekeeping, "Service")["ExecStart"].endswith("manage.py housekeeping")


@EACH
@pytest.mark.skipif(not shutil.which("systemd-analyze"), reason="no systemd here to ask")
def test_systemd_understands_it(name: str, tmp_path: Path) -> None:
    """Its programs are looked for as well: this checkout's, and this Python's."""
    for other, path in UNITS.items():
        text = path.read_text().replace("/srv/run-up/.venv/bin", str(Path(sys.executable).parent))
        (tmp_path / other).write_text(text.replace("/srv/run-up", str(ROOT)))
    done = subprocess.run(
        ["systemd-analyze", "verify", "--man=no", "--recursive-errors=no", tmp_path / name],
        capture_output=True,
        text=True,
    )

    assert (done.returncode, [line for line in done.stderr.splitlines() if name in line]) == (0, [])
