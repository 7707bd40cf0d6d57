"""The procedures of a bench. Their order is common practice, from what the machines need."""

from exercises.drills.put_in_order.arriving import ARRIVE
from exercises.drills.put_in_order.edits import ASSEMBLE, INSERT, MEND, NEXT_TAPE
from exercises.drills.put_in_order.preparing import BLACK, LEADER
from exercises.drills.put_in_order.sessions import END, START
from exercises.drills.put_in_order.setting_up import PLAYER, RECORDER, SOUND

PROCEDURES = (
    PLAYER,
    RECORDER,
    SOUND,
    ASSEMBLE,
    INSERT,
    MEND,
    NEXT_TAPE,
    LEADER,
    BLACK,
    START,
    ARRIVE,
    END,
)
