import numpy as np

from exercises.signal.sound.samples import Samples
from exercises.signal.sound.splice import RAMP, butted, cut


def level(value: float, count: int) -> Samples:
    return np.full(count, value, np.float32)


def test_cut_goes_from_one_sound_to_the_other_within_the_ramp() -> None:
    heard = cut(level(1, 1000), level(-1, 1000), out=400, in_=300)

    assert len(heard) == 400 + 700
    assert (heard[:401] == 1).all()
    assert (np.diff(heard[400 : 400 + RAMP]) < 0).all()
    assert (heard[400 + RAMP :] == -1).all()


def test_cut_out_at_the_very_end_of_a_sound() -> None:
    heard = cut(level(1, 400), level(-1, 400), out=400, in_=0)

    assert len(heard) == 800


def test_stretches_in_small_pieces_are_the_same() -> None:
    stretches = [np.arange(500, dtype=np.float32), np.arange(900, 1400, dtype=np.float32)]
    whole = np.concatenate(list(butted([[each] for each in stretches])))

    pieces = np.concatenate(list(butted([np.array_split(each, 37) for each in stretches])))

    np.testing.assert_array_equal(pieces, whole)


def test_cut_of_a_sound_into_itself_changes_nothing() -> None:
    sound = np.sin(np.arange(1000, dtype=np.float32))

    np.testing.assert_allclose(cut(sound, sound, out=500, in_=500), sound, atol=1e-6)
