"""Processes under test: which there are, and waiting for what one does."""

import time
from collections.abc import Callable
from pathlib import Path


def until(true: Callable[[], object], seconds: float = 60) -> None:
    patience = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < patience, "it never came"
        time.sleep(0.05)


def is_there(process: int) -> bool:
    """What has ended and waits to be counted by its parent is not."""
    try:
        status = Path(f"/proc/{process}/stat").read_text()
    except FileNotFoundError:
        return False
    return status.rpartition(")")[2].split()[0] != "Z"


def children_of(process: int) -> dict[int, str]:
    """Their command lines."""
    children = Path(f"/proc/{process}/task/{process}/children").read_text().split()
    return {int(child): Path(f"/proc/{child}/cmdline").read_text() for child in children}
