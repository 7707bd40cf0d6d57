"""What is dear to make and the same for all tests: made once in a run, by whoever needs it first.

The processes that run a share of the tests each find it in the folder of the run
(`tests/environment.py`). What is made is only read: a test takes a copy.
"""

import fcntl
import os
import shutil
from collections.abc import Callable
from pathlib import Path

RUN = "RUN_UP_TESTS"
"""The variable that names the folder of a run."""


def once(name: str, make: Callable[[Path], object]) -> Path:
    """The path that `make` has filled, with a file or a folder. It is there whole or not at all."""
    made = Path(os.environ[RUN], name)
    part = made.with_name(f"{name}.part")
    with made.with_name(f"{name}.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not made.exists():
            if part.is_dir():  # of whoever failed
                shutil.rmtree(part)
            part.unlink(missing_ok=True)
            make(part)
            part.rename(made)
    return made
