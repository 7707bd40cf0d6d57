"""The procedures of a bench. Their order is common practice, from what the machines need."""

from exercises.drills.kinds.put_in_order.arriving import ARRIVING
from exercises.drills.kinds.put_in_order.circumstances import CIRCUMSTANCES
from exercises.drills.kinds.put_in_order.finishing import FINISHING
from exercises.drills.kinds.put_in_order.job import made
from exercises.drills.kinds.put_in_order.jobs import JOBS
from exercises.drills.kinds.put_in_order.planning import PLANNED
from exercises.drills.kinds.put_in_order.preparing import PREPARING
from exercises.drills.kinds.put_in_order.procedure import Procedure
from exercises.drills.kinds.put_in_order.sessions import SESSIONS
from exercises.drills.kinds.put_in_order.setting_up import SET_UP
from exercises.drills.setting.draw import Draw

STANDING = (*SET_UP, *ARRIVING, *PREPARING, *SESSIONS, *FINISHING, *PLANNED)
EDITS = tuple((job, special) for job in JOBS for special in CIRCUMSTANCES if special.fits(job))
OF_EDITS = 0.7  # the share of questions that are about an edit


def drawn(draw: Draw) -> Procedure:
    if draw.chance(OF_EDITS):
        return made(*draw.pick(EDITS), draw)
    return draw.pick(STANDING).made(draw)
