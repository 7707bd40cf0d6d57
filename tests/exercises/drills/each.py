"""The kinds, one test each; in modules that go through them, all of one kind together.

So those of its tests that run in one process share the questions (`made`).
"""

import pytest

from exercises.drills.register import KINDS

# What an instructor reads has no right answer to compute.
JUDGED = {slug: kind for slug, kind in KINDS.items() if not kind.by_hand}

EACH_KIND = pytest.mark.parametrize("drill", KINDS.values(), ids=KINDS, scope="session")
EACH_JUDGED = pytest.mark.parametrize("drill", JUDGED.values(), ids=JUDGED, scope="session")
