"""A picture that somebody sends: looked at, then drawn anew as a plain JPEG.

What it is, its content says, never its name. Nothing of the file that was sent is kept but the
pixels: no place, no time, no camera, no name, and nothing hidden before or behind them.

The file may be made to harm: a few bytes that take minutes to decode, or all memory. So its parts
are counted (`parts.py`), it waits for its turn (`turn.py`), and a process of its own with limits
decodes it (`apart.py` runs `worker.py`).
"""

from exercises.signal.photographs.limits import LARGEST_FILE, MOST_PIXELS, SIDE
from exercises.signal.photographs.reduced import small
from exercises.signal.photographs.taking import Photograph, photograph
from exercises.signal.photographs.trouble import PhotographRefused
from exercises.signal.photographs.turn import PhotographsBusy

__all__ = [
    "LARGEST_FILE",
    "MOST_PIXELS",
    "SIDE",
    "Photograph",
    "PhotographRefused",
    "PhotographsBusy",
    "photograph",
    "small",
]
