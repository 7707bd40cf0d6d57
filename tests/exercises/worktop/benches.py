"""The benches that practicals are tried at: the usual ones, and those at a limit."""

from dataclasses import replace

import pytest

from exercises.drills.setting.settings import USUAL, Settings
from exercises.tape import Rate
from exercises.worktop.shelf import practicals
from tests.exercises.drills.benches import LIMITS

AT_29_97 = Settings.usual(Rate.R29_97)
DROP_FRAME = replace(AT_29_97, bench=replace(AT_29_97.bench, drop_frame=True))
USUAL_BENCHES = {"625": USUAL, "525": AT_29_97, "525, drop-frame": DROP_FRAME}
BENCHES = USUAL_BENCHES | {f"{name}, at a limit": each for name, each in LIMITS.items()}

EACH = pytest.mark.parametrize("practical", practicals().values(), ids=practicals())
AT_ANY = pytest.mark.parametrize("settings", BENCHES.values(), ids=BENCHES)
AT_USUAL = pytest.mark.parametrize("settings", USUAL_BENCHES.values(), ids=USUAL_BENCHES)
