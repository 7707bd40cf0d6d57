"""The rules that feedback names: one sentence each, true of every bench."""

from exercises.drills.rule import Rule as Rule

CONTINUE = Rule(
    text="Where the pulses end, assemble: it is the one mode that lays pulses, "
    "and they run on from those before it.",
    skill="continuing-a-master",
    lesson="assemble-and-insert",
    section="assemble",
)
PREPARED = Rule(
    text="Where pulses run on, insert: it records the tracks you choose "
    "and leaves everything else alone.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="insert",
)
NO_PULSES = Rule(
    text="An insert lays no pulses: where the tape has none, what it lays can’t be played.",
    skill="tracks-and-pulses",
    lesson="assemble-and-insert",
    section="insert-needs-pulses",
)
ENDS = Rule(
    text="An assemble wipes the tape past its end, "
    "so it can’t end cleanly right before something that must stay.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="assemble-end",
    gapless="The pulses of an assemble are out of phase with those past its end, "
    "so it can’t end cleanly right before something that must stay.",
)
ONE_TRACK = Rule(
    text="To change one track and keep the other, insert that track alone.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="which-mode",
)
RUN_UP = Rule(
    text="Both machines need their run-up: pulses in phase right before the edit in, "
    "on the source tape and on the edit master.",
    skill="run-up",
    lesson="assemble-and-insert",
    section="run-up-on-both",
)
MOVES = Rule(
    text="Nothing on a tape moves: a recording replaces what is there.",
    skill="replacing-inside-it",
    lesson="what-an-edit-is",
    section="cuts-only",
)
CUT = Rule(
    text="A cut is all that two machines can make.",
    skill="what-the-bench-cant-do",
    lesson="what-an-edit-is",
    section="cuts-only",
)
ONE_TAKE = Rule(
    text="Keep an edit inside one take: at the end of a take the pulses end with it.",
    skill="run-up",
    lesson="what-is-on-the-tape",
    section="across-a-joint",
)
NO_GAP = Rule(
    text="An assemble follows at the very frame where the last one ended, or leaves a hole.",
    skill="continuing-a-master",
    lesson="assemble-and-insert",
    section="gap",
)
ONE_PHASE = Rule(
    text="Prepare a tape in one go: where a second recording begins, the pulses jump.",
    skill="tracks-and-pulses",
    lesson="what-is-on-the-tape",
    section="black",
)
AFTERWARDS = Rule(
    text="Blank tape after the last shot is no fault: the next assemble goes there.",
    skill="continuing-a-master",
    lesson="assemble-and-insert",
    section="assemble-end",
)
TRACKING_PEAK = Rule(
    text="Turn the player’s tracking to the meter’s peak, wherever the needle stands there; "
    "and where meter and picture disagree, go by the picture.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="meter-and-picture",
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
WHITE_LEVEL = Rule(
    text="Set the picture level so that a white stands at 100 IRE, which is 700 mV at "
    "625 lines: above 110 IRE it is clipped for good, and too low it is flat.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
BARS_BY_NAME = Rule(
    text="Read on the card which bars they are: the first of their four figures says how much of "
    "a white the white bar is, and there it belongs on the waveform.",
    skill="picture-level",
    lesson="setting-up-the-recorder",
    section="leader",
)
BY_THE_WAVEFORM = Rule(
    text="Set the picture level by waveform or needle: a monitor has controls of its own, and "
    "somebody may have turned them.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
ENDS_ONCE = Rule(
    text="A looped line ends in 75 Ω once, at its last box: without an end a level is twice as "
    "high, with two it is two thirds.",
    skill="picture-level",
    lesson="the-machines",
    section="looping",
)
THREE_LAMPS = Rule(
    text="Dew lit: leave the machine. Reference dark: find the lead. Servo lock dark or blinking: "
    "not locked yet.",
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
CHANNEL_BY_CHANNEL = Rule(
    text="An insert records the sound channels that are chosen, and leaves the other alone.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="insert",
)
LISTEN_TO_BOTH = Rule(
    text="A switch chooses which sound channels are heard: listen to each, then to both.",
    skill="sound-level",
    lesson="what-is-on-the-tape",
    section="three-tracks",
)
TWO_METERS = Rule(
    text="Speech and tone go by the VU meter, short knocks by the peak meter: "
    "a needle that is slow on purpose doesn’t show them.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
BLACK_LEVEL = Rule(
    text="Black belongs at 7.5 IRE on most machines for 525 lines, and at blanking, 0, on those "
    "for 625: higher it turns grey, lower its shadows are lost.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
LEVEL_IS_LAID = Rule(
    text="What a copy has clipped, or lost in its noise, is so on the edit master for good: look "
    "at its own level, and lay the shot again while you can.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="too-weak-too-strong",
)
SOUND_LEVEL = Rule(
    text="Set every take by hand, so that its loudest words just reach 0 VU: a limiter is for a "
    "few decibels of peaks, and automatic gain lifts the room in every pause.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
DRIFTS = Rule(
    text="Set tracking for each take in its rehearsal, and watch while you record: at the first "
    "fine noise bring it back gently and at once. If a band got onto the edit master, make the "
    "edit again.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="drift",
)
NOISE_BAND = Rule(
    text="White streaks in a band across the picture: the player’s tracking was off. "
    "What was copied so stays so, and the shot must be copied again.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="picture",
)
BENT_TOP = Rule(
    text="Upright lines that bend over at the top of the picture: the player’s skew was off. "
    "It is in the copy for good.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="picture",
)
TOO_LOW = Rule(
    text="A flat, grey picture has its white too low: below 80 IRE it is a fault. "
    "Set the picture level before the edit.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="picture",
)
TOO_HIGH = Rule(
    text="White without any detail has been clipped: above 110 IRE nothing more is recorded, "
    "and no level brings it back.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="picture",
)
ALIKE_AT_A_CUT = Rule(
    text="Both sides of a cut may pass and still not match: more than 10 IRE between their whites "
    "is seen as a jump.",
    skill="seeing-a-bad-edit",
    lesson="picture-and-sound-levels",
    section="matching",
)
NO_FLASH = Rule(
    text="One to three frames of something else at a cut are a flash: "
    "an edit out came too early, or an edit in too late.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="level-and-timing",
)
FEW_COPIES = Rule(
    text="Each copy adds grain and takes detail: soft, grainy pictures were copied too often. "
    "Go back to an earlier generation.",
    skill="seeing-a-bad-edit",
    lesson="what-an-edit-is",
    section="generation",
)
ROLLS = Rule(
    text="A picture that rolls and leans was played or copied before the machine was locked: "
    "it needs run-up over pulses in phase.",
    skill="seeing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="run-up",
)
NOTHING_PLAYS = Rule(
    text="Grey grain from edge to edge is tape where nothing plays: "
    "there are no pulses there, or no picture.",
    skill="seeing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="pulses",
)
NO_FAULT = Rule(
    text="A cut changes the picture at once, and that is all: "
    "look for what the tape did, not for what the shot shows.",
    skill="seeing-a-bad-edit",
    lesson="what-an-edit-is",
    section="cuts-only",
)
SET_UP_FIRST = Rule(
    text="Set the player up for every source tape before you record: what is copied wrong "
    "stays wrong.",
    skill="player-set-up",
    lesson="setting-up-the-player",
    section="set-up-first",
)
SPEECH_BY_HAND = Rule(
    text="Set speech by hand so that its loudest words just reach 0 VU: too loud distorts for "
    "good, automatic gain lifts every pause.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
LINE_UP = Rule(
    text="Line up on tone: recorded at 0 VU, it tells the next machine where your levels lie.",
    skill="sound-level",
    lesson="setting-up-the-recorder",
    section="leader",
)
EACH_TAKE = Rule(
    text="Two takes at two levels are two edits: set the second by hand, by its own loudest words.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
BELOW_SPEECH = Rule(
    text="Ambience belongs below speech: at its loudest, at about −10 VU.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
LIMITER = Rule(
    text="A limiter takes a few decibels off peaks that come without warning. It lifts nothing, "
    "and where there is no peak it does nothing.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
AT_ONCE = Rule(
    text="Play every joint as soon as it is made, and mend a bad one before the next shot.",
    skill="mending",
    lesson="knowing-a-bad-edit",
    section="mend-now",
)
LEADER_FIRST = Rule(
    text="A leader comes before the film, and the first edit needs pulses before it: record "
    "black first.",
    skill="continuing-a-master",
    lesson="setting-up-the-recorder",
    section="leader",
)
ONE_RECORDER = Rule(
    text="One project, one recorder: no two are quite alike.",
    skill="recorder-set-up",
    lesson="setting-up-the-recorder",
    section="one-recorder",
)
LEAVE_IN_ORDER = Rule(
    text="Leave the edit master so that others can go on: its last joint good, its end noted "
    "in time code.",
    skill="planning-and-time-code",
    lesson="finishing",
    section="leave-in-order",
)
DROP_LABELS = Rule(
    text="Drop-frame time code leaves out labels, never pictures: 00 and 01 of every minute "
    "but each tenth.",
    skill="planning-and-time-code",
    lesson="planning",
    section="time-code",
)
COUNTER = Rule(
    text="The counter counts pulses from where it was set to zero; time code is recorded on "
    "the tape.",
    skill="planning-and-time-code",
    lesson="planning",
    section="time-code",
)
OUT_LESS_IN = Rule(
    text="A length is edit out less edit in: the edit out is the first frame that no longer "
    "belongs.",
    skill="planning-and-time-code",
    lesson="what-an-edit-is",
    section="three-points",
)
ROOM_FOR_RUN_UP = Rule(
    text="Count run-up with every take: the edit in lies at least a run-up after its first frame.",
    skill="run-up",
    lesson="what-is-on-the-tape",
    section="run-up",
)
TOUCHING_TAKES = Rule(
    text="Takes that touch are two recordings: the pulses jump between them, and each has only "
    "the run-up of its own.",
    skill="run-up",
    lesson="what-is-on-the-tape",
    section="takes",
)
NO_RUN_UP_BY_PRE_ROLL = Rule(
    text="Run-up is on the tape, or it is not: a longer pre-roll makes none.",
    skill="run-up",
    lesson="run-up",
    section="three-stretches",
)
BLACK_COUNTS = Rule(
    text="Black is a recording like any other: its pulses give run-up, "
    "and where it lies you can insert.",
    skill="tracks-and-pulses",
    lesson="what-is-on-the-tape",
    section="black",
)
MARK_EARLY = Rule(
    text="In assemble rather mark a little early than late: early costs a few frames, "
    "late leaves a hole without pulses, and the shot must be laid again.",
    skill="continuing-a-master",
    lesson="making-an-edit",
    section="too-late",
)
KEEP_CLEAR = Rule(
    text="An assemble needs room past its end: it wipes tape there.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="assemble-end",
)
GENERATIONS_ADD = Rule(
    text="Each copy is one generation more, shot by shot, and the noise of every recording on the "
    "way adds up: copy from the earliest tape you have.",
    skill="what-a-copy-is",
    lesson="what-an-edit-is",
    section="generation",
)
WHOLE_WORDS = Rule(
    text="Cut between words: a word that begins or ends at a cut must be heard whole.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
NO_BREATH = Rule(
    text="A breath right at a cut belongs to words that are not there: cut before it or after it.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
SOUND_ALIKE = Rule(
    text="Both sides of a cut may pass and still not match: a step of more than 3 dB in the speech "
    "is heard.",
    skill="hearing-a-bad-edit",
    lesson="picture-and-sound-levels",
    section="matching",
)
OVER_THE_HISS = Rule(
    text="Speech more than 10 dB under line-up lies too near the hiss, and turning it up later "
    "turns up both.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
UNDER_THE_CEILING = Rule(
    text="Harsh, rough speech was recorded too high: "
    "what the tape can’t hold is lost, and no level brings it back.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
QUIET_PAUSES = Rule(
    text="Noise that swells between the words comes from automatic gain: set the level by hand.",
    skill="hearing-a-bad-edit",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
TAPE_ITSELF = Rule(
    text="Sound that dips away from every cut came in with the source tape: play that by itself, "
    "and if it dips there too, use another take.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
STEADY_PITCH = Rule(
    text="A pitch that wavers comes from a machine that was not locked: "
    "it needs run-up over pulses in phase.",
    skill="hearing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="run-up",
)
NO_HOLE = Rule(
    text="Where no sound was copied or no pulses are, the room itself falls silent.",
    skill="hearing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="pulses",
)
WELL_HEARD = Rule(
    text="At a good cut the voice may change, but words are whole, levels match "
    "and the room goes on.",
    skill="hearing-a-bad-edit",
    lesson="what-an-edit-is",
    section="cuts-only",
)
