"""Which step asks for a hand on the tracking: told by the envelope, not by the generator."""

import math

from exercises.drills.draw import Draw
from exercises.drills.register import KINDS
from exercises.drills.watch_it_drift.minute import EVERY, SECONDS, minute
from exercises.tape import Rate
from exercises.tape.limits import LIMITS

DRIFT = KINDS["watch-it-drift"]


def loss(percent: int) -> float:
    """The envelope's fall in dB where the head is as wide as the track: triangular.

    Standard text, from memory: e = 1 - |x| / w, so −6.02 dB at half a track.
    """
    return -20 * math.log10(max(1e-9, 1 - min(abs(percent), 100) / 100))


def test_due_step_is_the_first_whose_envelope_falls_too_far() -> None:
    for seed in range(200):
        shown = minute(Draw(seed), Rate.R25, wander=4)
        fallen = [round(10 * loss(off)) > LIMITS.envelope_loss for off in shown.steps]

        assert shown.due == (fallen.index(True) if True in fallen else None)


def test_minute_is_shown_every_five_seconds() -> None:
    shown = minute(Draw(1), Rate.R29_97, wander=3)

    assert (len(shown.tracking), len(shown.steps)) == (SECONDS, SECONDS // EVERY)


def test_some_minutes_need_no_hand() -> None:
    answers = [DRIFT.make(seed).right for seed in range(120)]
    (name,) = answers[0]
    never = list(DRIFT.make(0).asks[0].every())[-1]
    share = sum(answer[name] == never for answer in answers) / len(answers)

    assert 0.15 <= share <= 0.6
