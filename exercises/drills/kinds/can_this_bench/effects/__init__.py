"""All that is asked for."""

from exercises.drills.kinds.can_this_bench.effects.channels import CHANNELS
from exercises.drills.kinds.can_this_bench.effects.copies import COPIES
from exercises.drills.kinds.can_this_bench.effects.ends import ENDS
from exercises.drills.kinds.can_this_bench.effects.fades import FADES
from exercises.drills.kinds.can_this_bench.effects.inside import INSIDE
from exercises.drills.kinds.can_this_bench.effects.machines import MACHINES
from exercises.drills.kinds.can_this_bench.effects.pictures import PICTURES
from exercises.drills.kinds.can_this_bench.effects.pulses import PULSES
from exercises.drills.kinds.can_this_bench.effects.room import ROOM
from exercises.drills.kinds.can_this_bench.effects.sounds import SOUNDS
from exercises.drills.kinds.can_this_bench.effects.tracking import TRACKING

EFFECTS = (
    *CHANNELS,
    *COPIES,
    *ENDS,
    *FADES,
    *INSIDE,
    *MACHINES,
    *PICTURES,
    *PULSES,
    *ROOM,
    *SOUNDS,
    *TRACKING,
)
