"""Having what was written on the disk itself, so that a power cut does not take it."""

import os
from pathlib import Path


def settle(path: Path) -> None:
    """Wait until the disk has a file, or the names in a folder."""
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
