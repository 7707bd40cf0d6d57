"""Rules of what is seen of a bad edit."""

from exercises.drills.judging.rule import Rule

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
NO_PICTURE = Rule(
    text="Snow from edge to edge, or a muted screen, is tape without a picture, as a rule blank. "
    "Recorded without pulses looks otherwise: it never locks, drifts and tears.",
    skill="seeing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="pulses",
)
STREAKS_OF_ITS_OWN = Rule(
    text="Short single streaks, now here and now there through a whole shot, came in with the "
    "source tape: play that by itself, and if it has them too, use another.",
    skill="seeing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
NO_FAULT = Rule(
    text="A cut changes the picture at once, and that is all: "
    "look for what the tape did, not for what the shot shows.",
    skill="seeing-a-bad-edit",
    lesson="what-an-edit-is",
    section="cuts-only",
)
