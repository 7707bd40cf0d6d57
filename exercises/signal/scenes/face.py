"""A face that talks, modelled in relief."""

from dataclasses import dataclass

from exercises.signal.scenes.relief import Ball, Limb, Skin, Solid


@dataclass(frozen=True, slots=True)
class Likeness:
    """Who it is. ``beard`` and ``cap`` are None where there is none; ``hair`` then shows."""

    skin: Skin
    lips: Skin
    hair: Skin
    coat: Skin
    collar: Skin
    beard: Skin | None = None
    cap: Skin | None = None
    jaw: float = 1.0


WHITE = Skin((0.80, 0.78, 0.74), 0.3)
IRIS = Skin((0.20, 0.25, 0.28), 0.9)
PUPIL = Skin((0.03, 0.03, 0.04), 0.9)
MOUTH = Skin((0.16, 0.05, 0.05))
TEETH = Skin((0.72, 0.69, 0.62), 0.2)

KEEPER = Likeness(
    skin=Skin((0.80, 0.55, 0.43), 0.10, 0.22),
    lips=Skin((0.60, 0.33, 0.28), 0.12, 0.3),
    hair=Skin((0.62, 0.60, 0.57), 0.0, 2.6),
    coat=Skin((0.13, 0.16, 0.22), 0.0, 0.8),
    collar=Skin((0.30, 0.33, 0.38), 0.0, 1.5),
    beard=Skin((0.66, 0.63, 0.59), 0.0, 3.2),
    cap=Skin((0.15, 0.20, 0.28), 0.0, 1.3),
)

CLERK = Likeness(
    skin=Skin((0.74, 0.52, 0.41), 0.12, 0.10),
    lips=Skin((0.58, 0.27, 0.26), 0.25, 0.1),
    hair=Skin((0.20, 0.14, 0.11), 0.25, 1.2),
    coat=Skin((0.34, 0.17, 0.19), 0.0, 0.9),
    collar=Skin((0.74, 0.71, 0.64), 0.0, 0.5),
    jaw=0.97,
)


def head(person: Likeness, *, mouth: float, blink: float) -> list[Solid]:
    """Solids for a head at (320, 215); ``mouth`` and ``blink`` are 0 to 1, open and shut."""
    drop = 13 * mouth
    return [
        *_body(person),
        *_skull(person, drop),
        *_hair(person, drop),
        *_mouth(person, mouth, drop),
        *_eyes(person, blink),
    ]


def _body(person: Likeness) -> list[Solid]:
    return [
        Ball((320, 480, -70), (205, 130, 70), person.coat, soft=6),
        Limb((320, 290, -30), (320, 360, -35), (50, 58), person.skin, soft=8),
        Ball((320, 368, -16), (78, 34, 56), person.collar, soft=4),
        Ball((320, 346, -16), (70, 27, 56), person.collar, soft=4),
        Limb((272, 372, 6), (236, 480, 20), (15, 30), person.coat, soft=5),
        Limb((368, 372, 6), (404, 480, 20), (15, 30), person.coat, soft=5),
    ]


def _skull(person: Likeness, drop: float) -> list[Solid]:
    skin, jaw = person.skin, person.jaw
    return [
        Ball((238, 212, -18), (13, 27, 12), skin, turn=-8, soft=4),
        Ball((402, 212, -18), (13, 27, 12), skin, turn=8, soft=4),
        Ball((320, 188, 0), (80, 102, 66), skin),
        Ball((320, 238 + drop / 3, 12), (66 * jaw, 76, 55), skin, soft=26),
        Ball((320, 292 + drop, 40), (30 * jaw, 24, 26), skin, soft=22),
        Ball((284, 236, 30), (28, 30, 30), skin, soft=26),
        Ball((356, 236, 30), (28, 30, 30), skin, soft=26),
        Limb((280, 176, 58), (360, 176, 58), (10, 10), skin, soft=16),
        Limb((320, 184, 62), (320, 232, 80), (7, 10), skin, soft=15),
        Ball((320, 237, 76), (14, 12, 17), skin, soft=9),
        Ball((305, 241, 68), (9, 8, 10), skin, soft=7),
        Ball((335, 241, 68), (9, 8, 10), skin, soft=7),
    ]


def _hair(person: Likeness, drop: float) -> list[Solid]:
    solids: list[Solid] = []
    if person.beard is not None:
        beard = person.beard
        solids += [
            Limb((252, 230, 8), (270, 288 + drop / 2, 34), (12, 26), beard, soft=9),
            Limb((388, 230, 8), (370, 288 + drop / 2, 34), (12, 26), beard, soft=9),
            Ball((320, 312 + drop, 44), (58, 36, 34), beard, soft=12),
            Limb((316, 254, 84), (284, 268 + drop / 4, 68), (8, 7), beard, soft=5),
            Limb((324, 254, 84), (356, 268 + drop / 4, 68), (8, 7), beard, soft=5),
        ]
    if person.cap is None:
        hair = person.hair
        solids += [
            Ball((320, 168, -14), (94, 104, 74), hair, soft=3),
            Ball((320, 92, -30), (36, 30, 40), hair, soft=4),
            Ball((284, 128, 22), (60, 34, 48), hair, turn=-28, soft=5),
            Ball((362, 126, 20), (50, 30, 46), hair, turn=30, soft=5),
        ]
    brows = [((276, 170, 78), (306, 167, 82)), ((364, 170, 78), (334, 167, 82))]
    solids += [Limb(start, end, (4, 5.5), person.hair, soft=2.5) for start, end in brows]
    if person.cap is not None:
        solids += [
            Ball((320, 132, 2), (86, 68, 78), person.cap, soft=3),
            Ball((320, 147, 2), (90, 25, 86), person.cap, soft=2),
        ]
    return solids


def _mouth(person: Likeness, mouth: float, drop: float) -> list[Solid]:
    wide = 21 - 4 * mouth
    upper, lower = 270 - mouth, 277 + drop
    gap: list[Solid] = []
    if mouth > 0.08:
        tall = (lower - upper) / 2
        gap = [
            Ball((320, (upper + lower) / 2, 79), (wide - 1, tall, 4), MOUTH, soft=0.5),
            Ball((320, upper + tall * 0.55, 80), (wide - 6, tall * 0.4, 4), TEETH, soft=0.5),
        ]
    return [
        *gap,
        Limb((320 - wide, 273, 74), (314, upper, 80), (2.0, 3.6), person.lips, soft=2.5),
        Limb((320 + wide, 273, 74), (326, upper, 80), (2.0, 3.6), person.lips, soft=2.5),
        Limb((314, upper, 80), (326, upper, 80), (3.6, 3.6), person.lips, soft=2.5),
        Limb((320 - wide, 274, 74), (312, lower, 79), (2.0, 4.6), person.lips, soft=2.5),
        Limb((320 + wide, 274, 74), (328, lower, 79), (2.0, 4.6), person.lips, soft=2.5),
        Limb((312, lower, 79), (328, lower, 79), (4.6, 4.6), person.lips, soft=2.5),
    ]


def _eyes(person: Likeness, blink: float) -> list[Solid]:
    solids: list[Solid] = []
    for x, inward in ((290, 1), (350, -1)):
        lid = 186 + 14 * blink
        solids += [
            Ball((x, 198, 52), (15, 10, 16), WHITE, soft=0.5),
            Ball((x + inward, 197, 55), (6.6, 7.2, 14.5), IRIS, soft=0.5),
            Ball((x + inward, 197, 58), (3, 3, 12.5), PUPIL, soft=0.5),
            Limb((x - 17, lid + 6, 57), (x, lid, 64), (3.5, 5.5), person.skin, soft=3),
            Limb((x + 17, lid + 6, 57), (x, lid, 64), (3.5, 5.5), person.skin, soft=3),
            Limb((x - 14, 209, 58), (x + 14, 209, 58), (3.5, 3.5), person.skin, soft=6),
        ]
    return solids
