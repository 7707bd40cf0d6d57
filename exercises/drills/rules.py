"""The rules that feedback names: one sentence each, true of every bench."""

CONTINUE = (
    "Where the pulses end, assemble: it is the one mode that lays pulses, "
    "and they run on from those before it."
)
PREPARED = (
    "Where pulses run on, insert: it records the tracks you choose "
    "and leaves everything else alone."
)
NO_PULSES = "An insert lays no pulses: where the tape has none, what it lays can’t be played."
ENDS = (
    "An assemble wipes the tape past its end, "
    "so it can’t end cleanly right before something that must stay."
)
ONE_TRACK = "To change one track and keep the other, insert that track alone."
RUN_UP = (
    "Both machines need their run-up: pulses in phase right before the edit in, "
    "on the source tape and on the master."
)
MOVES = "Nothing on a tape moves: a recording replaces what is there."
CUT = "A cut is all that two machines can make."
ONE_TAKE = "Keep an edit inside one take: at the end of a take the pulses end with it."
NO_GAP = "An assemble follows at the very frame where the last one ended, or leaves a hole."
ONE_PHASE = "Prepare a tape in one go: where a second recording begins, the pulses jump."
AFTERWARDS = "Blank tape after the last shot is no fault: the next assemble goes there."
