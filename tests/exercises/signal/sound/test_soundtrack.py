import numpy as np

from exercises.signal.sound.soundtrack import Loop, Mixed, Silence

LOOP = Loop(np.array([1, 2, 3], np.float32))


def test_loop_begins_again() -> None:
    assert LOOP.read(2, 5).tolist() == [3, 1, 2, 3, 1]


def test_loop_reaches_back_before_its_start() -> None:
    assert LOOP.read(-1, 3).tolist() == [3, 1, 2]


def test_mixed_sounds_add() -> None:
    assert Mixed((LOOP, LOOP, Silence())).read(0, 3).tolist() == [2, 4, 6]
