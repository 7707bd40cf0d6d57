from enum import StrEnum

from exercises.tape.playback import Condition


class Trouble(StrEnum):
    """Why a frame of one track is not what is wanted there, worst first.

    Playback's conditions say which track they are about; these are the same for either. That
    something else is recorded, or cut where it should be mixed, plays well: only who knows
    what is wanted can tell.
    """

    NO_PULSES = "no-pulses"
    BLANK = "blank"
    OTHER = "other"
    ROLL = "roll"
    UNSETTLED = "unsettled"
    CUT = "cut"


TROUBLES = {
    Condition.NO_CONTROL: Trouble.NO_PULSES,
    Condition.RELOCK: Trouble.ROLL,
    Condition.NO_PICTURE: Trouble.BLANK,
    Condition.NO_SOUND: Trouble.BLANK,
    Condition.UNSETTLED: Trouble.UNSETTLED,
    Condition.UNSETTLED_SOUND: Trouble.UNSETTLED,
    Condition.CLEAN: None,
}
