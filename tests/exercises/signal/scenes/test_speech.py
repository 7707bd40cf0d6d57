from exercises.signal.scenes.speech import blink, chatter, from_loudness, within


def test_mouth_follows_loudness() -> None:
    loudness = [0.0] * 4 + [0.9] * 4 + [0.0] * 4
    opened = [from_loudness(loudness, n) for n in range(12)]

    assert opened[:3] == [0.0] * 3
    assert opened[5:7] == [0.9] * 2
    assert opened[9:] == [0.0] * 3


def test_mouth_is_shut_outside_what_is_heard() -> None:
    assert [from_loudness([1.0, 1.0], n) for n in (-5, 9)] == [0.0, 0.0]
    assert from_loudness([], 0) == 0.0


def test_mouth_opens_within_marked_words_only() -> None:
    words = [(10, 16), (20, 30)]
    opened = [within(words, n) > 0 for n in range(40)]

    assert opened == [any(start <= n < end for start, end in words) for n in range(40)]


def test_chatter_pauses_for_breath() -> None:
    mouths = [chatter(n) for n in range(600)]

    assert 0.15 < sum(mouth == 0 for mouth in mouths) / 600 < 0.5
    assert 0 <= min(mouths) <= max(mouths) <= 1


def test_lids_shut_now_and_then() -> None:
    lids = [blink(n) for n in range(600)]

    assert 0.01 < sum(lid > 0 for lid in lids) / 600 < 0.1
    assert 0 <= min(lids) <= max(lids) <= 1
