"""A text without what is drawn into it: people, benches, tapes, shots, times."""

import re

from exercises.drills.setting import quay_street

SHOTS = (
    *quay_street.ACTIONS,
    *quay_street.TALKS,
    *quay_street.SOUNDS,
    *quay_street.CARDS,
)
WORLD = (
    *quay_street.PEOPLE,
    *quay_street.BENCHES,
    *quay_street.TAPES,
    *(shot.picture for shot in SHOTS),
    *(shot.sound for shot in SHOTS),
)
DRAWN = re.compile(
    "|".join(re.escape(name) for name in sorted(WORLD, key=len, reverse=True)), re.IGNORECASE
)
TIMES = re.compile(r"\d\d:\d\d:\d\d:\d\d|(\d+ (minute|second|frame)s? ?)+")


def skeleton(text: str) -> str:
    return TIMES.sub("#", DRAWN.sub("…", text))
