"""Sound out of step with its picture, against Rec. ITU-R BT.1359-1.

Detectable from 45 ms early to 125 ms late, acceptable from 90 ms early to 185 ms late: at 29.97
pictures a second +1.35 to -3.75 and +2.70 to -5.54 frames, at 25 +1.13 to -3.13 and +2.25
to -4.63.
"""

import pytest

from exercises.tape import simulate

UNNOTICED, NOTICED, UNACCEPTABLE = None, "perceptible, but not annoying", "annoying"

VERDICTS = [
    ("29.97", 1, UNNOTICED),
    ("29.97", 2, NOTICED),
    ("29.97", 3, UNACCEPTABLE),
    ("29.97", -3, UNNOTICED),
    ("29.97", -4, NOTICED),
    ("29.97", -5, NOTICED),
    ("29.97", -6, UNACCEPTABLE),
    ("25", 1, UNNOTICED),
    ("25", 2, NOTICED),
    ("25", 3, UNACCEPTABLE),
    ("25", -3, UNNOTICED),
    ("25", -4, NOTICED),
    ("25", -5, UNACCEPTABLE),
    ("25", -6, UNACCEPTABLE),
]


@pytest.mark.parametrize(("rate", "frames", "verdict"), VERDICTS)
def test_sound_so_many_frames_early(rate: str, frames: int, verdict: str | None) -> None:
    """Rec. ITU-R BT.1359-1: detectable and acceptable limits, in frames."""
    shot = {"mode": "insert", "source": "Interview 1", "at": 200}
    answer = simulate(
        {
            "rate": rate,
            "bench": {"lock": 0},
            "master": {"length": 400, "recorded": [{"start": 0, "end": 400, "what": "black"}]},
            "sources": {"Interview 1": {"takes": [{"start": 0, "end": 900, "sync": True}]}},
            "edits": [
                {**shot, "picture": True, "sound": False, "in": 300, "out": 400},
                {**shot, "picture": False, "sound": True, "in": 300 + frames, "out": 400 + frames},
            ],
        }
    )

    faults = answer["faults"]
    assert isinstance(faults, list)
    assert [(fault["kind"], fault["severity"]) for fault in faults] == (
        [] if verdict is None else [("sound-out-of-step", verdict)]
    )
