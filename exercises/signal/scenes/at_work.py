"""The keeper as he turns the crank, seen from the side."""

from math import cos, sin

from exercises.signal.scenes.relief import Ball, Limb, Skin, Solid

HUB = (404.0, 286.0)  # of the crank
REACH = 52.0

COAT = Skin((0.16, 0.19, 0.26), 0.0, 0.9)
TROUSERS = Skin((0.20, 0.18, 0.16), 0.0, 0.9)
BOOT = Skin((0.07, 0.06, 0.06), 0.35, 0.2)
SKIN = Skin((0.80, 0.54, 0.42), 0.1, 0.2)
BEARD = Skin((0.66, 0.63, 0.58), 0.0, 2.4)
CAP = Skin((0.14, 0.18, 0.26), 0.0, 1.0)
IRON = Skin((0.20, 0.21, 0.22), 0.6, 0.2)
WOOD = Skin((0.46, 0.30, 0.17), 0.25, 0.3)


def keeper(turned: float) -> list[Solid]:
    """He stands left of the crank and leans into it as it goes round."""
    grip = (HUB[0] + REACH * cos(turned), HUB[1] + REACH * sin(turned))
    lean = 13 * cos(turned)
    bend = 9 * sin(turned)
    hip, chest = (226.0 + lean * 0.3, 318.0), (262.0 + lean, 226.0 + bend)
    face = (298.0 + lean * 1.15, 166.0 + bend * 1.2)
    far_shoulder, near_shoulder = (chest[0] + 14, chest[1] - 14), (chest[0] - 8, chest[1] - 10)
    return [
        *_arm(far_shoulder, (grip[0], grip[1] - 5), -26, 16),
        *_leg((hip[0] + 8, hip[1]), (276, 378), (268, 446), -14),
        *_leg((hip[0] - 8, hip[1]), (212, 384), (186, 448), 10),
        Limb((*hip, 0), (*chest, 4), (34, 40), COAT, soft=8),
        Limb((hip[0] - 4, hip[1] + 6, 4), (hip[0] - 12, hip[1] + 42, 2), (36, 38), COAT, soft=10),
        *_head(face, chest),
        Limb((*HUB, -4), (*grip, 6), (6, 5), IRON, soft=1),
        Ball((*HUB, 2), (12, 12, 14), IRON),
        Limb((grip[0] - 9, grip[1], 12), (grip[0] + 11, grip[1], 12), (6, 6), WOOD, soft=1),
        *_arm(near_shoulder, grip, 30, 26),
    ]


def _arm(
    shoulder: tuple[float, float], grip: tuple[float, float], near: float, sag: float
) -> list[Solid]:
    middle = ((shoulder[0] + grip[0]) / 2, (shoulder[1] + grip[1]) / 2)
    reach = ((grip[0] - shoulder[0]) ** 2 + (grip[1] - shoulder[1]) ** 2) ** 0.5
    bent = sag + max(0.0, 150 - reach) * 0.35
    elbow = (middle[0] - bent * 0.25, middle[1] + bent)
    wrist = (elbow[0] + 0.86 * (grip[0] - elbow[0]), elbow[1] + 0.86 * (grip[1] - elbow[1]))
    return [
        Limb((*shoulder, near), (*elbow, near + 6), (21, 16), COAT, soft=5),
        Limb((*elbow, near + 6), (*wrist, near + 4), (16, 11), COAT, soft=5),
        Ball((*grip, near), (12, 11, 12), SKIN, soft=3),
        Limb(
            (grip[0] - 7, grip[1] - 6, near + 6), (grip[0] + 7, grip[1] - 5, near + 6), (5, 5), SKIN
        ),
        Limb(
            (grip[0] - 7, grip[1] + 3, near + 7), (grip[0] + 7, grip[1] + 4, near + 7), (5, 5), SKIN
        ),
    ]


def _leg(
    hip: tuple[float, float], knee: tuple[float, float], heel: tuple[float, float], near: float
) -> list[Solid]:
    return [
        Limb((*hip, near), (*knee, near + 8), (26, 19), TROUSERS, soft=6),
        Limb((*knee, near + 8), (heel[0], heel[1] - 20, near), (19, 15), TROUSERS, soft=6),
        Limb((heel[0], heel[1] - 18, near), (heel[0], heel[1], near), (15, 13), BOOT, soft=2),
        Limb(
            (heel[0], heel[1] + 2, near), (heel[0] + 32, heel[1] + 5, near), (12, 10), BOOT, soft=3
        ),
    ]


def _head(face: tuple[float, float], chest: tuple[float, float]) -> list[Solid]:
    """In profile, looking down at the crank."""
    x, y = face
    return [
        Limb((chest[0] + 8, chest[1] - 22, 2), (x - 6, y + 18, 4), (19, 17), SKIN, soft=4),
        Limb(
            (chest[0] - 6, chest[1] - 30, 8),
            (chest[0] + 26, chest[1] - 28, 10),
            (15, 15),
            CAP,
            soft=4,
        ),
        Ball((x, y, 6), (30, 35, 27), SKIN),
        Ball((x + 12, y + 16, 8), (20, 24, 22), SKIN, turn=-20, soft=8),
        Limb((x + 27, y + 1, 10), (x + 35, y + 11, 8), (4, 6), SKIN, soft=4),
        Ball((x + 10, y + 27, 10), (23, 18, 22), BEARD, turn=18, soft=5),
        Limb((x - 8, y + 6, 20), (x + 2, y + 26, 20), (5, 11), BEARD, soft=6),
        Limb((x + 20, y + 17, 16), (x + 33, y + 18, 12), (4, 4), BEARD, soft=3),
        Ball((x - 10, y + 6, 27), (6, 9, 6), SKIN, soft=3),
        Limb((x + 16, y - 6, 22), (x + 29, y - 4, 14), (3, 3), BEARD, soft=2),
        Ball((x + 22, y + 1, 22), (4, 2.6, 4), Skin((0.08, 0.07, 0.07), 0.6), soft=1),
        Ball((x - 2, y - 20, 6), (33, 23, 31), CAP, turn=6, soft=2),
        Ball((x, y - 10, 6), (35, 10, 33), CAP, turn=8, soft=2),
    ]
