"""Rules of the edit: which mode, over which tracks, with how much run-up."""

from exercises.drills.judging.rule import Rule

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
    text="An insert lays no pulses: where the tape has none, nothing locks to what it lays, "
    "and it can’t be used.",
    skill="tracks-and-pulses",
    lesson="assemble-and-insert",
    section="insert-needs-pulses",
)
TWO_KINDS_OF_ERASING = Rule(
    text="A full-width head clears all tracks ahead of the drum; erase heads on the drum clear "
    "stripe by stripe. Without these, no clean edit in over a recording, and no insert.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="erasing",
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
WORN_SOURCE = Rule(
    text="What a source tape does whenever it is played comes in with the shot, and no edit did "
    "it: take the shot from another take, and lay only that part again.",
    skill="replacing-inside-it",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
WORN_MASTER = Rule(
    text="A place of the edit master that drops out before an edit does so after it: "
    "what is worn stays worn, and only another tape helps.",
    skill="continuing-a-master",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
PLAYER_OFF = Rule(
    text="Where streaks lie over all of a tape, edited or not, first adjust the tracking of the "
    "machine that plays; if they go, they were not on the tape.",
    skill="continuing-a-master",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
