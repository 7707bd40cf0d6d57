"""What the documents say is there, and what is there they say."""

import os
import re
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from http.client import HTTPConnection
from pathlib import Path

import pytest

from tests.processes import children_of, is_there, until

ROOT = Path(__file__).parents[1]
PATIENCE = 300  # seconds: a machine whose cores are all busy needs long for a demo and a round
README = (ROOT / "README.md").read_text()
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text()
SETTINGS = (ROOT / "course" / "settings.py").read_text()
COMMANDS = sorted(
    path.stem for path in ROOT.glob("*/management/commands/*.py") if not path.stem.startswith("_")
)
BENCHES = sorted(
    path.stem
    for path in (ROOT / "tests" / "bench").glob("*.py")
    if 'if __name__ == "__main__"' in path.read_text()
)


def command_under(heading: str) -> list[str]:
    """The lines of the first fenced block under a heading of the README."""
    found = re.search(rf"^#+ {heading}\n\n```\n(.*?)```", README, re.DOTALL | re.MULTILINE)
    assert found, f"README.md has no command right under {heading}"
    return found[1].splitlines()


@pytest.mark.parametrize("heading", ["Run", "Test"])
def test_readme_gives_one_command_under(heading: str) -> None:
    assert len(command_under(heading)) == 1


def test_front_door_runs_what_the_command_leaves_out() -> None:
    """What needs no browser by the README's command, and the rest by one that the README names."""
    [command] = command_under("Test")
    python, _, options = command.rpartition(" && ")[2].partition(' -m "not browser"')

    assert (python.startswith(".venv/bin/python -m pytest"), options) == (True, "")
    assert f"`{python} -m browser`" in README
    assert f"\n{python} -m browser\n" in (ROOT / ".ci" / "run").read_text()


@pytest.mark.parametrize("variable", sorted(set(re.findall(r'env\.\w+\(\s*"([A-Z_]+)"', SETTINGS))))
def test_readme_explains_the_variable(variable: str) -> None:
    assert f"| `{variable}` |" in README


@pytest.mark.parametrize("command", COMMANDS)
def test_developers_explains_the_command(command: str) -> None:
    assert f"`manage.py {command}`" in DEVELOPERS


@pytest.mark.parametrize("bench", BENCHES)
def test_developers_explains_the_bench(bench: str) -> None:
    assert f"`python -m tests.bench.{bench}`" in DEVELOPERS


@pytest.mark.parametrize("document", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_document_links_to_what_is_there(document: str) -> None:
    links = re.findall(r"\]\(([^)#:]+)\)", document)

    assert [link for link in links if not (ROOT / link).exists()] == []


@pytest.mark.parametrize("document", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_document_names_places_that_are_there(document: str) -> None:
    places = re.findall(r"`((?:course|exercises|templates|static|tests|\.ci)/[\w./-]*)`", document)

    assert places
    assert [place for place in places if not (ROOT / place).exists()] == []


@contextmanager
def started(folder: Path, port: int) -> Iterator[subprocess.Popen[bytes]]:
    """The site as the README starts it, with its data in a folder of its own."""
    kept = {name: value for name, value in os.environ.items() if name in ("PATH", "HOME")}
    environment = kept | {"DATA_DIR": str(folder), "PORT": str(port)}
    server = subprocess.Popen([sys.executable, "manage.py", "start"], cwd=ROOT, env=environment)
    try:
        yield server
    finally:
        server.terminate()
        server.wait(60)


@pytest.fixture
def port() -> int:
    """One that is free now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def front_page(server: subprocess.Popen[bytes], port: int) -> int:
    """The status of the front page, once the site answers: later where the machine is busy."""
    patience = time.monotonic() + PATIENCE
    while server.poll() is None and time.monotonic() < patience:
        connection = HTTPConnection("127.0.0.1", port, timeout=10)
        try:
            connection.request("GET", "/")
            return connection.getresponse().status
        except (ConnectionError, TimeoutError):
            time.sleep(0.25)
        finally:
            connection.close()
    return 0


def test_start_serves_the_demo_and_keeps_it(tmp_path: Path, port: int) -> None:
    with started(tmp_path, port) as server:
        first = front_page(server, port)
        children = children_of(server.pid)
    (keeper,) = [child for child, command in children.items() if "housekeeping" in command]
    until(lambda: not is_there(keeper), PATIENCE)
    database = tmp_path / "run-up.sqlite3"
    key = (tmp_path / "secret-key").read_text()
    size = database.stat().st_size

    with started(tmp_path, port) as server:
        again = front_page(server, port)

    assert (first, again) == (200, 200)
    assert (tmp_path / "housekeeping").read_text()  # a round was done
    assert ((tmp_path / "secret-key").read_text(), database.stat().st_size) == (key, size)
