"""Rules of planning, time code and the order of the work."""

from exercises.drills.judging.rule import Rule

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
ZERO_TO_BE_FOUND = Rule(
    text="Without time code, set the counter to zero on a frame that you can recognise, and write "
    "down which.",
    skill="planning-and-time-code",
    lesson="planning",
    section="time-code",
)
CODE_OF_THE_MASTER = Rule(
    text="The edit master’s time code is laid with the black; an insert leaves it and an assemble "
    "lays more. On some formats it takes a sound channel.",
    skill="planning-and-time-code",
    lesson="setting-up-the-recorder",
    section="leader",
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
    text="In assemble, mark a little early rather than late. Early costs a few frames. Late leaves "
    "a hole; as much as a run-up behind it is unsteady, and the shot is laid again.",
    skill="continuing-a-master",
    lesson="making-an-edit",
    section="too-late",
)
KEEP_CLEAR = Rule(
    text="An assemble wipes tape past its end: nobody assembles in front of what can’t be "
    "replaced.",
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
