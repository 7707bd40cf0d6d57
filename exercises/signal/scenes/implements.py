"""Tools in relief, hung on pegs and stood on a shelf."""

from itertools import pairwise
from math import sin

from exercises.signal.scenes.relief import Ball, Limb, Skin, Solid

STEEL = Skin((0.42, 0.45, 0.48), 0.8, 0.25)
IRON = Skin((0.20, 0.19, 0.19), 0.5, 0.5)
WOOD = Skin((0.56, 0.37, 0.20), 0.2, 0.5)
ROPE = Skin((0.66, 0.56, 0.38), 0.0, 1.6)
TIN = Skin((0.45, 0.16, 0.12), 0.7, 0.2)


def implements() -> list[Solid]:
    """All of them; the blade of the saw is flat, and not among them."""
    return [*_hammer(), *_saw(), *_spanners(), *_coil(), *_oil_can(), *_pegs()]


def _pegs() -> list[Solid]:
    return [
        Limb((x, y, 0), (x, y - 3, 16), (4, 4), WOOD) for x, y in ((92, 96), (236, 92), (520, 90))
    ]


def _hammer() -> list[Solid]:
    return [
        Limb((92, 104, 6), (96, 300, 4), (7, 10), WOOD),
        Limb((52, 108, 8), (122, 108, 8), (16, 15), IRON, soft=1),
        Limb((48, 108, 8), (38, 108, 8), (19, 19), STEEL, soft=1),
    ]


def _saw() -> list[Solid]:
    """Its handle; the blade is flat."""
    return [
        Limb((196, 118, 6), (244, 104, 6), (12, 12), WOOD, soft=4),
        Limb((196, 118, 6), (198, 152, 6), (12, 12), WOOD, soft=4),
        Limb((244, 104, 6), (248, 150, 6), (12, 13), WOOD, soft=4),
        Limb((198, 152, 6), (248, 150, 6), (10, 10), WOOD, soft=4),
    ]


def _spanners() -> list[Solid]:
    solids: list[Solid] = []
    for number, x in enumerate((310, 346, 380)):
        long, thick = 150 - 24 * number, 7.5 - number
        top, low = 116.0, 116.0 + long
        solids += [Limb((x, top, 2), (x, low, 2), (thick, thick), STEEL)]
        for y, side in ((top, -1), (low, 1)):
            solids += [
                Limb((x, y, 3), (x - 11, y + side * 16, 3), (thick, thick * 0.8), STEEL, soft=3),
                Limb((x, y, 3), (x + 11, y + side * 16, 3), (thick, thick * 0.8), STEEL, soft=3),
            ]
    return solids


def _coil() -> list[Solid]:
    around: list[Solid] = []
    for turn, radius in enumerate((72, 62, 67)):
        places = [
            (
                520 + 0.78 * radius * sin(step / 16 * 6.2832),
                178 - 1.15 * radius * sin(step / 16 * 6.2832 + 1.5708),
            )
            for step in range(17)
        ]
        around += [
            Limb((*start, 3.0 + 3 * turn), (*end, 3.0 + 3 * turn), (6.5, 6.5), ROPE, soft=1)
            for start, end in pairwise(places)
        ]
    return [
        *around,
        Limb((520, 92, 14), (516, 122, 14), (7, 7), ROPE),
        Limb((536, 240, 10), (560, 330, 6), (6, 5), ROPE),
    ]


def _oil_can() -> list[Solid]:
    return [
        Ball((400, 378, 4), (44, 34, 30), TIN),
        Limb((400, 352, 6), (404, 330, 6), (15, 9), TIN, soft=4),
        Limb((404, 332, 6), (468, 272, 8), (6, 2.6), TIN, soft=2),
        Limb((362, 372, 8), (352, 336, 8), (5, 5), TIN, soft=3),
        Limb((352, 336, 8), (392, 336, 8), (5, 5), TIN, soft=3),
        Limb((540, 404, 4), (540, 356, 4), (26, 26), STEEL, soft=2),
        Ball((540, 352, 8), (24, 8, 20), IRON, soft=1),
    ]
