"""The arrays that pictures are made of."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

# Rows × columns × red, green, blue, 0 to 255: what a screen shows.
Picture = NDArray[np.uint8]

# Rows × columns, or rows × columns × 3, in whatever unit its user says. They are float32;
# the type is wider because numpy's annotations widen it in arithmetic with plain numbers.
Plane = NDArray[np.floating[Any]]

# Rows × columns of whole quarters of a shade, black 0 to white 1020: half the memory of
# float32 and twice as quick, and finer than a screen shows.
Quarters = NDArray[np.int16]

# Rows × columns, true or false.
Mask = NDArray[np.bool_]

# (width, height), in that order, as Pillow has it; shapes of arrays are (rows, columns).
Size = tuple[int, int]

STANDARD: Size = (640, 480)
