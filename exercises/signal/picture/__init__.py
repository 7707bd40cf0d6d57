"""How a picture looks that was on tape: noise, streaks, bends, levels, lost detail.

>>> from exercises.signal.footage import frame
>>> rendered(frame("grid", 0), Look(skew=3.0), 0).shape
(480, 640, 3)
"""

from exercises.signal.picture.look import CLEAN, Look
from exercises.signal.picture.rendering import rendered

__all__ = ["CLEAN", "Look", "rendered"]
