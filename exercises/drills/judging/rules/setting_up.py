"""Rules of setting up player and recorder."""

from exercises.drills.judging.rule import Rule

TRACKING_PEAK = Rule(
    text="Turn the player’s tracking to the meter’s peak, wherever the needle stands there; "
    "and where meter and picture disagree, go by the picture.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="meter-and-picture",
)
TRACKING_MIDWAY = Rule(
    text="Without a meter, find the streaks on both sides, and set the player’s tracking midway "
    "between them; where only one side is in reach, go by the fine noise.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="tracking",
)
FIXED_POSITION = Rule(
    text="While it records, the recorder’s tracking stands at its fixed position: "
    "turned, it lays its tracks where no other machine looks for them.",
    skill="recorder-set-up",
    lesson="setting-up-the-recorder",
    section="fixed-tracking",
)
STRAIGHT = Rule(
    text="Tracking clears a noise band, skew straightens verticals: "
    "turn skew until they stand upright right up to the upper edge.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="skew",
)
NO_BAND = Rule(
    text="Skew straightens verticals, tracking clears a noise band: "
    "turn tracking to the middle between the streaks that begin on either side.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="tracking",
)
ENDS_ONCE = Rule(
    text="A looped line ends in 75 Ω once, at its last box: without an end a level is twice as "
    "high, with two it is two thirds.",
    skill="picture-level",
    lesson="the-machines",
    section="looping",
)
THREE_LAMPS = Rule(
    text="Dew lit: no tape goes in; with one inside, press stop, leave the power on, fetch the "
    "person in charge. Reference dark: find the lead. Servo lock dark or blinking: not locked yet.",
    skill="recorder-set-up",
    lesson="the-machines",
    section="lamps",
)
IN_OR_TAPE = Rule(
    text="While a recorder stands or records, its monitor shows what comes in; only heads that "
    "play show the tape.",
    skill="recorder-set-up",
    lesson="the-machines",
    section="monitors",
)
DRIFTS = Rule(
    text="Look at each take in its rehearsal; where fine noise shows, set tracking for it. Watch "
    "while you record: at the first fine noise bring it back gently and at once. If a band got "
    "onto the edit master, make the edit again.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="drift",
)
SET_UP_FIRST = Rule(
    text="Set the player up for every source tape before you record: what is copied wrong "
    "stays wrong.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="set-up-first",
)
ONE_RECORDER = Rule(
    text="One project, one recorder: no two are quite alike.",
    skill="recorder-set-up",
    lesson="setting-up-the-recorder",
    section="one-recorder",
)
PROTECTED = Rule(
    text="Before a source tape goes near a bench, make sure that nothing can record on it, and "
    "read its label.",
    skill="player-set-up",
    lesson="the-machines",
    section="wrong-machine",
)
