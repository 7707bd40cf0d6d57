"""A text without what is drawn into it: people, benches, tapes, shots, times."""

import re
from functools import lru_cache

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
# Looked for in small letters: three times as fast as without regard to case.
DRAWN = re.compile(
    "|".join(re.escape(name.lower()) for name in sorted(WORLD, key=len, reverse=True))
)
TIMES = re.compile(r"\d\d:\d\d:\d\d:\d\d|(\d+ (minute|second|frame)s? ?)+")


@lru_cache(maxsize=20_000)
def skeleton(text: str) -> str:
    kept, at = [], 0
    for drawn in DRAWN.finditer(text.lower()):
        kept.append(text[at : drawn.start()])
        at = drawn.end()
    return TIMES.sub("#", "…".join([*kept, text[at:]]))
