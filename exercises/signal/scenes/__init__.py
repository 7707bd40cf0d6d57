"""Scenes of *The Bridge Keeper*: drawn by rule, a picture for each frame number.

Nothing is random: the same scene, frame and size give the same picture. What does not move
is drawn once for each size and kept. Thirty frames are a second of the film.
"""

from exercises.signal.scenes.register import SCENES, TALKING

__all__ = ["SCENES", "TALKING"]
