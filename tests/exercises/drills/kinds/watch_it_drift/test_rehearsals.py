"""Which take asks for a hand on the tracking: told by what is seen, not by the generator."""

import math
from collections import Counter

from exercises.drills.kinds.set_tracking.seen import seen
from exercises.drills.kinds.watch_it_drift.rehearsals import NEVER, TAKES, rehearsals
from exercises.drills.register import KINDS
from exercises.drills.setting.draw import Draw
from exercises.tape.limits import LIMITS
from tests.exercises.drills.made import many

DRIFT = KINDS["watch-it-drift"]


def loss(percent: int) -> float:
    """The envelope's fall in dB where the head is as wide as the track: triangular.

    From memory: e = 1 - |x| / w, so −6.02 dB at half a track.
    """
    return -20 * math.log10(max(1e-9, 1 - min(abs(percent), 100) / 100))


def test_due_take_is_the_first_whose_picture_is_more_than_a_little_noisy() -> None:
    calm = ("No streaks, and hardly any fine noise.", "No streaks; a little fine noise.")
    for seed in range(200):
        watched = rehearsals(Draw(seed))
        noisy = [seen(off) not in calm for off in watched.tracking]

        assert watched.due == (noisy.index(True) if True in noisy else None)


def test_take_that_is_due_shows_no_streaks_yet() -> None:
    for seed in range(200):
        watched = rehearsals(Draw(seed))
        if watched.due is not None:
            assert "streaks on" not in seen(watched.tracking[watched.due])


def test_band_is_the_first_take_whose_envelope_falls_too_far() -> None:
    for seed in range(200):
        watched = rehearsals(Draw(seed))
        fallen = [round(10 * loss(off)) > LIMITS.envelope_loss for off in watched.tracking]

        assert watched.band == (fallen.index(True) if True in fallen else None)


def test_every_answer_but_the_first_take_is_about_as_often_right() -> None:
    right = Counter(question.right["step"] for question in many(DRIFT, 800))

    assert set(right) == {NEVER, *map(str, range(2, TAKES + 1))}
    assert all(60 <= count <= 140 for count in right.values())


def test_whoever_waits_for_streaks_is_told_what_that_costs() -> None:
    question = next(
        each
        for each in many(DRIFT, 50)
        if each.key["band"] is not None and each.right["step"] != NEVER
    )
    late = str(question.key["band"] + 1)

    verdict = DRIFT.grade(question, {"step": late})

    assert not verdict.right
    assert f"waits for streaks touches it at take {late} only" in verdict.feedback["verdict"]


def test_copies_left_alone_get_the_band_where_it_is_told() -> None:
    for seed, question in enumerate(many(DRIFT, 60)):
        verdict = DRIFT.grade(question, {"step": NEVER})
        banded = any("Noise band" in each for each in verdict.feedback["happened"])

        assert banded == (question.key["band"] is not None), seed
