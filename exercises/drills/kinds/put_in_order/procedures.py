"""The procedures of a bench. Their order is common practice, from what the machines need."""

from exercises.drills.draw import Draw
from exercises.drills.put_in_order.arriving import ARRIVING
from exercises.drills.put_in_order.circumstances import CIRCUMSTANCES
from exercises.drills.put_in_order.finishing import FINISHING
from exercises.drills.put_in_order.job import made
from exercises.drills.put_in_order.jobs import JOBS
from exercises.drills.put_in_order.planning import PLANNED
from exercises.drills.put_in_order.preparing import PREPARING
from exercises.drills.put_in_order.procedure import Procedure
from exercises.drills.put_in_order.sessions import SESSIONS
from exercises.drills.put_in_order.setting_up import SET_UP

STANDING = (*SET_UP, *ARRIVING, *PREPARING, *SESSIONS, *FINISHING, *PLANNED)
EDITS = tuple((job, special) for job in JOBS for special in CIRCUMSTANCES if special.fits(job))
OF_EDITS = 0.7  # the share of questions that are about an edit


def drawn(draw: Draw) -> Procedure:
    if draw.chance(OF_EDITS):
        return made(*draw.pick(EDITS), draw)
    return draw.pick(STANDING).made(draw)
