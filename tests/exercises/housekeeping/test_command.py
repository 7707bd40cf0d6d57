"""The process that keeps house: it waits for what is missing, and ends when it is told to."""

import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.processes import is_there, until

ROOT = Path(__file__).parents[3]
COMMAND = [sys.executable, "manage.py", "housekeeping"]
# Starts the process as `start` does, says its number, and lives on.
SITE = """
import os, subprocess, sys, time
command = [sys.executable, "manage.py", "housekeeping", "--site", str(os.getpid())]
print(subprocess.Popen(command).pid, flush=True)
time.sleep(600)
"""


@pytest.fixture
def environment(tmp_path: Path) -> dict[str, str]:
    kept = {name: value for name, value in os.environ.items() if name != "DATABASE_URL"}
    return kept | {"DATA_DIR": str(tmp_path)}


@pytest.fixture
def keeper(environment: dict[str, str], tmp_path: Path) -> Iterator["subprocess.Popen[bytes]"]:
    """The process, looking often; what it complains of is in `complaints`."""
    with (tmp_path / "complaints").open("wb") as complaints:
        process = subprocess.Popen(
            [*COMMAND, "--every", "0.2"], cwd=ROOT, env=environment, stderr=complaints
        )
        yield process
        process.kill()
        process.wait()


def test_it_outlives_a_database_that_is_away_and_ends_when_told(
    keeper: "subprocess.Popen[bytes]", environment: dict[str, str], tmp_path: Path
) -> None:
    mark, complaints = tmp_path / "housekeeping", tmp_path / "complaints"
    until(lambda: "Housekeeping waits: no such table" in complaints.read_text())
    before = mark.read_text()
    subprocess.run(
        [sys.executable, "manage.py", "migrate", "-v0", "--skip-checks"], cwd=ROOT, env=environment
    )
    until(mark.read_text)
    keeper.terminate()

    assert (before, keeper.wait(30)) == ("", 0)
    assert "Traceback" not in complaints.read_text()


def test_it_ends_with_the_site_that_started_it(environment: dict[str, str], tmp_path: Path) -> None:
    """Even if that is killed, and can tell nobody."""
    site = subprocess.Popen(
        [sys.executable, "-c", SITE], cwd=ROOT, env=environment, stdout=subprocess.PIPE
    )
    assert site.stdout
    keeper = int(site.stdout.readline())
    until((tmp_path / "housekeeping").exists)
    lived = is_there(keeper)
    site.kill()
    site.wait()
    site.stdout.close()
    until(lambda: not is_there(keeper))

    assert lived
