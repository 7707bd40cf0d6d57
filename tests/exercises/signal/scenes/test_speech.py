from exercises.signal.scenes.speech import blink, chatter, within


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
