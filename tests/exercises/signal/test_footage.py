import numpy as np
import pytest

from exercises.signal.arrays import Size
from exercises.signal.footage import FOOTAGE, frame
from exercises.signal.patterns import PATTERNS
from exercises.signal.scenes import SCENES, TALKING

STILL = {"bars", "bars-100", "black", "grid"}


def test_film_has_eight_scenes_and_a_tape_its_patterns() -> None:
    assert len(SCENES) >= 8
    assert sorted(PATTERNS) == ["bars", "bars-100", "black", "grid", "leader"]


@pytest.mark.parametrize("size", [(320, 240), (384, 288)])
@pytest.mark.parametrize("name", FOOTAGE)
def test_frame_has_the_size_asked_for(name: str, size: Size) -> None:
    shown = frame(name, 12, size)

    assert shown.shape == (size[1], size[0], 3)
    assert shown.dtype == np.uint8


@pytest.mark.parametrize("name", FOOTAGE)
def test_frame_is_the_same_whenever_it_is_asked_for(name: str) -> None:
    first = frame(name, 40, (160, 120)).copy()
    frame(name, 41, (160, 120))

    assert np.array_equal(frame(name, 40, (160, 120)), first)


@pytest.mark.parametrize("name", FOOTAGE)
def test_scenes_move_and_patterns_stand_still(name: str) -> None:
    moved = not np.array_equal(frame(name, 40, (160, 120)), frame(name, 48, (160, 120)))

    assert moved == (name not in STILL)


@pytest.mark.parametrize("name", SCENES)
def test_scene_has_light_and_shade(name: str) -> None:
    """A picture with nothing dark, or nothing light, would not show a wrong level."""
    luma = frame(name, 90, (320, 240)) @ np.array([0.299, 0.587, 0.114])
    dark, light = np.percentile(luma, [1, 99.5])

    assert dark < 80
    assert light - dark > 70


@pytest.mark.parametrize("name", TALKING)
def test_mouth_opens_only_the_mouth(name: str) -> None:
    shut, wide = (frame(name, 30, mouth=opened).astype(int) for opened in (0.0, 1.0))
    rows, columns = np.nonzero(np.abs(shut - wide).sum(axis=2) > 60)

    assert 225 < rows.mean() < 330
    assert 240 < columns.mean() < 400
    assert rows.size < 0.1 * 640 * 480


def test_mouth_says_nothing_to_a_scene_without_a_face() -> None:
    assert np.array_equal(frame("tools", 3, mouth=1.0), frame("tools", 3))
