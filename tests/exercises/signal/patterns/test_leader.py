import numpy as np

from exercises.signal.patterns.leader import picture

SIZE = (320, 240)


def test_leader_changes_its_number_each_second_and_ends_in_black() -> None:
    starts = [picture(30 * second, SIZE) for second in range(12)]
    dark = [not shown.any() for shown in starts]

    assert dark == [False] * 8 + [True] * 4
    assert len({shown.tobytes() for shown in starts}) == 9


def test_hand_goes_round_once_a_second() -> None:
    hands = [picture(n, SIZE).astype(int) - picture(0, SIZE) for n in range(1, 30)]

    assert all(np.abs(hand).max() > 100 for hand in hands)
    assert np.array_equal(picture(25, SIZE, rate=25)[:40], picture(30, SIZE)[:40])
