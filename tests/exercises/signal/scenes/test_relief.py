import numpy as np

from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import FAR, Ball, Limb, Relief, Skin

SKIN = Skin((0.5, 0.5, 0.5))


def test_ball_is_as_high_as_its_radius() -> None:
    relief = Relief((0, 0, 40, 40), 1)
    relief.add([Ball((20.5, 20.5, 3), (8, 8, 5), SKIN)])

    assert relief.height[20, 20] == np.float32(8)
    assert relief.height[20, 30] == FAR


def test_limb_narrows_from_one_end_to_the_other() -> None:
    relief = Relief((0, 0, 60, 40), 1)
    relief.add([Limb((10, 20, 0), (50, 20, 0), (8, 2), SKIN)])
    thick = (relief.height > FAR).sum(axis=0)

    assert (thick[12], thick[47]) == (16, 4)


def test_what_is_higher_hides_what_is_lower() -> None:
    relief = Relief((0, 0, 40, 40), 1)
    relief.add(
        [
            Ball((20, 20, 30), (6, 6, 6), Skin((1, 0, 0))),
            Ball((20, 20, 0), (15, 15, 15), Skin((0, 1, 0))),
        ]
    )

    assert relief.skin[20, 20].tolist()[:2] == [1, 0]
    assert relief.skin[20, 8].tolist()[:2] == [0, 1]


def test_side_towards_the_lamp_is_the_lighter_one() -> None:
    relief = Relief((0, 0, 40, 40), 2)
    relief.add([Ball((20, 20, 0), (15, 15, 15), SKIN)])
    image = np.asarray(lit(relief, Light((-1, 0, 0.4))))

    assert image[20, 10, 0] > image[20, 30, 0] + 40
    assert (image[1, 1, 3], image[20, 20, 3]) == (0, 255)
