"""A backup of a site that is being written to gives back one moment of it, row by row."""

import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from threading import Thread

import pytest

from tests.quay_street import prepared
from tests.sites import ROOT, Site, Table, new_site

pytestmark = pytest.mark.database
LEARNERS = 3
BACKUPS = 2


@dataclass
class Answering:
    """Learners who answer; the numbers of the attempts that were acknowledged so far."""

    process: "subprocess.Popen[str]"
    acknowledged: list[int]

    def follow(self) -> None:
        assert self.process.stdout
        for line in self.process.stdout:
            self.acknowledged.append(int(line))

    def go_on(self, answers: int = 10) -> None:
        """Wait until so many more answers were acknowledged."""
        goal = len(self.acknowledged) + answers
        while len(self.acknowledged) < goal:
            assert self.process.poll() is None, "the learners have stopped"
            time.sleep(0.05)


@contextmanager
def answering(site: Site) -> Iterator[Answering]:
    command = [sys.executable, "-m", "tests.course.backup.answering", str(LEARNERS)]
    process = subprocess.Popen(
        command, cwd=ROOT, env=site.environment(), stdout=subprocess.PIPE, text=True
    )
    assert process.stdout
    assert process.stdout.readline() == "ready\n"
    learners = Answering(process, [])
    reader = Thread(target=learners.follow)
    reader.start()
    try:
        yield learners
    finally:
        process.kill()
        process.wait()
        reader.join()
        process.stdout.close()


def test_every_backup_under_load_is_a_moment_of_the_site(tmp_path: Path) -> None:
    with new_site(tmp_path / "live") as live:
        prepared(live)
        with answering(live) as learners:
            acknowledged = [backed_up(live, learners, each) for each in archives(tmp_path)]
            learners.go_on()
        for archive, answers in zip(archives(tmp_path), acknowledged, strict=True):
            with new_site(tmp_path / archive.stem) as restored:
                restored.manage("restore", str(archive))
                assert_moment(restored, live, answers)


def archives(folder: Path) -> list[Path]:
    return [folder / f"backup-{number}.tar" for number in range(BACKUPS)]


def backed_up(live: Site, learners: Answering, archive: Path) -> set[int]:
    """The answers that were acknowledged before the backup began."""
    learners.go_on()
    acknowledged = {*learners.acknowledged}
    live.manage("backup", str(archive))
    return acknowledged


def assert_moment(restored: Site, live: Site, acknowledged: set[int]) -> None:
    then, now = restored.tables(), live.tables()
    attempts = then["exercises_attempt"].keys()

    assert then.keys() == now.keys()
    assert acknowledged <= attempts < now["exercises_attempt"].keys()
    for table in then.keys() - {"exercises_summary"}:
        still = {key: row for key, row in now[table].items() if key in then[table]}
        assert lasting(then[table]) == lasting(still), table
    # Every answer with all that was written in its transaction; this proves the summaries too.
    assert "are what the attempts come to" in restored.manage("summaries")
    # There may be a picture more, whose answer came too late.
    assert {*named(then)} <= pictures(restored).keys() <= pictures(live).keys()
    assert pictures(restored).items() <= pictures(live).items()


def lasting(rows: Table) -> Table:
    """Rows without the one column that is changed later: is this the latest question?"""
    return {key: {**row, "latest": None} for key, row in rows.items()}


def named(tables: dict[str, Table]) -> list[str]:
    """The pictures that the database names."""
    return [f"{row['name']}.jpg" for row in tables["exercises_upload"].values()]


def pictures(site: Site) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in (site.data / "pictures").iterdir()}
