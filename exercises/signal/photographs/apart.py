"""Decoding in a process of its own, which can be stopped and can't harm the site."""

import logging
import os
import signal
import subprocess
import sys
from pathlib import Path

from exercises.signal.photographs.limits import MEMORY, PATIENCE, SECONDS
from exercises.signal.photographs.trouble import PhotographRefused, PictureTrouble
from exercises.signal.photographs.turn import PhotographsBusy

ROOT = Path(__file__).parents[3]
COMMAND = [sys.executable, "-W", "ignore", "-m", "exercises.signal.photographs.worker"]
TROUBLES = {int(each) for each in PictureTrouble}
# By SIGXCPU it has used up its time; SIGKILL is the machine's, when its memory is at an end.
TOO_MUCH = {-signal.SIGXCPU, -signal.SIGKILL}

logger = logging.getLogger(__name__)


def drawn_apart(content: bytes) -> bytes:
    """What the process makes of a picture. PhotographRefused; PhotographsBusy.

    The process gets none of the site's variables: some are secrets.
    """
    try:
        done = subprocess.run(  # noqa: S603 - our own program and words
            [*COMMAND, str(SECONDS), str(MEMORY)],
            input=content,
            capture_output=True,
            timeout=PATIENCE,
            cwd=ROOT,
            env={"PATH": os.defpath},
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired) as error:  # a machine that can't keep up
        logger.warning("A picture could not be decoded: %s", error)
        raise PhotographsBusy from error
    if done.returncode == 0:
        return done.stdout
    raise trouble_of(done)


def trouble_of(done: "subprocess.CompletedProcess[bytes]") -> Exception:
    """Signals are the picture's fault; a status that nobody gave is ours, and is logged."""
    if done.returncode in TROUBLES:
        return PhotographRefused(PictureTrouble(done.returncode))
    if done.returncode in TOO_MUCH:
        return PhotographRefused(PictureTrouble.WORK)
    if done.returncode < 0:
        return PhotographRefused(PictureTrouble.BROKEN)
    logger.error("The process that decodes pictures failed: %s", done.stderr.decode())
    return PhotographsBusy()
