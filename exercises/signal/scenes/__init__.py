"""Footage of *The Bridge Keeper*: drawn by rule, a picture for each scene and frame number.

Nothing is random: the same scene, frame and size give the same picture. What does not move
is drawn once for each size and kept. Thirty frames are a second of the film.

>>> frame("harbour", 12).shape
(480, 640, 3)
"""

from exercises.signal.scenes.footage import SCENES, TALKING, frame

__all__ = ["SCENES", "TALKING", "frame"]
