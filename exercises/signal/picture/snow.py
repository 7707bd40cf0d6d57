"""Nothing recorded: the heads' own noise, without colour, without sync."""

import numpy as np

from exercises.signal.picture.components import Components, coarseness
from exercises.signal.picture.tiles import placed, snowy, window


def snow(shape: tuple[int, ...], n: int) -> Components:
    rows, columns = shape
    none = np.zeros((2, rows // 2, columns // coarseness(columns)), np.int16)
    return Components(window(snowy(rows, columns), rows, columns, placed(n, 7)).copy(), none)
