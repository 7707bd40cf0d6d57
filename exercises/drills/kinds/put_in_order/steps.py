"""Texts of steps that several procedures share, for some of which they are decoys."""

SET_ASSEMBLE = "Set the recorder to assemble"
SET_PICTURE = "Set the recorder to insert, picture alone"
SET_SOUND = "Set the recorder to insert, sound alone"
SET_BOTH = "Set the recorder to insert, picture and sound"
SET_CHANNEL = "Set the recorder to insert, the free sound channel alone"

MARK_END = "Mark the last shot’s end, and the edit in on {tape}"
MARK_AFTER = "Mark two seconds behind the last shot, and the edit in on {tape}"
MARK_BEFORE = "Mark two seconds before the cut, and as much earlier on {tape}"
MARK_IN_AND_OUT = "Mark edit in and edit out, and the edit in on {tape}"
MARK_SHOT = "Mark both ends of the old shot, and the edit in on {tape}"

CUE = "Cue: wind player and recorder back by the pre-roll"
CUE_PLAYER = "Cue: wind the player back by the pre-roll, with nothing done to the recorder"
CUE_RECORDER = "Cue: wind the recorder back by the pre-roll, and leave the player"
REHEARSE = "Rehearse: run the whole edit, with nothing recorded"
RECORD_ON = "Record, and let it run on past the end"
RECORD_TO = "Record, and let it stop at the edit out"
# The same in other words, as steps, not as decoys.
SAID_LONGER = {
    RECORD_TO: "Run it once more, and record, with the edit out for the controller to stop at",
    RECORD_ON: "Run it once more, and record, with some seconds of the shot to spare at its end",
}
LOOK = "Watch it, and listen, from the shot before to a little past the edit out"

BLACK_ALL_ALONG = "Record black along the whole tape, without a stop"
COUNTER = "Put the counter at zero, and read places off it"
LATER_ON = "Write down how much later all that follows now lies"
MOVE_IN = "Move the edit in a few frames later"
MOVE_OUT = "Move the edit out as far as the old shot goes"
MEND_AT_THE_END = "Note the faults, and mend the lot together"
TUNE_RECORDER = "Turn the recorder’s tracking until it looks best"
FIXED = "Put the recorder’s tracking at its fixed position"
TUNE_PLAYER = "Turn the player’s tracking until it looks best"
BY_HAND = "Set the sound level by hand, so that they just reach 0 VU"
FIRST_FRAME = "Use the take from its first frame, and lose nothing"
WIND_ONCE = "Wind the tape to its end and back, once"
NEW_TAPE = "Put the edit master away, and take a new tape"
