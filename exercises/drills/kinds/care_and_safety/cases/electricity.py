"""Mains: wet, smoke, worn leads, and machines that do nothing."""

from exercises.drills.kinds.care_and_safety.case import LICENSED, OTHER_RECORDER, CareCase
from exercises.drills.kinds.care_and_safety.rules import MAINS

OTHER = "Leave it off, and finish the tape on the other recorder"
OTHER_MEANWHILE = "It stays off, and the film goes on at the other bench"

TEA = CareCase(
    name="tea in the recorder",
    story="Tea runs into the recorder while {shot}, from {tape}, is being laid. The switch at the "
    "wall is on the dry side of the room.",
    wish="What comes first?",
    right="Switch it off at the wall, then fetch the person in charge",
    because="Water and mains together kill. The wall can be reached dry, so the supply goes "
    "first; the tapes come last.",
    wrong={
        "Take the tape out of it, then switch it off at the wall": "The machine is still live "
        "while you reach into it.",
        "Switch it off at its own front, then wipe it from above": "Behind its own switch it is "
        "still live, and it is wet.",
        "Leave it on, touch nothing, and fetch the person in charge": "The switch can be reached "
        "dry. Until it is off, the machine can kill or burn.",
    },
    rule=MAINS,
    caution=LICENSED,
)
WET_FLOOR = CareCase(
    name="a wet floor",
    story="Rain has come in by the window. The recorder is wet, and water stands on the floor "
    "around its socket. {tape}, with {shot}, is in it.",
    wish="What is to be done?",
    right="Have the supply cut from somewhere else, on dry ground",
    because="The wall can’t be reached dry. The supply of the room is cut where it is dry, by "
    "whoever is in charge of that.",
    wrong={
        "Switch it off at the wall, standing on something dry": "Your hand would still be where "
        "the water is.",
        "Pull its plug with a dry cloth, and then keep everybody out": "Water round a socket "
        "makes all of it live; cloth takes up water.",
        "Get the tape out first, and have the supply cut then": "The machine is live and wet. No "
        "tape is worth that.",
    },
    rule=MAINS,
    caution=LICENSED,
)
SMOKE = CareCase(
    name="smoke from the vents",
    story="Thin smoke comes out of the player’s vents, with a sharp smell. {tape}, with {shot}, "
    "is in it. Its switch at the wall is close by.",
    wish="What comes first?",
    right="Switch it off at the wall, and get everybody out",
    because="Without supply it may stop; if it does not, it is a fire. Fetch the person in charge "
    "from outside.",
    wrong={
        "Press eject, and switch it off once the tape is out": "Until it is off it may catch "
        "fire; the tape comes last.",
        "Switch it off at the wall, and look in through the slot": "Smoke is bad to breathe, and "
        "may turn to flames.",
        "Leave it on, keep away, and fetch the person in charge": "Its switch can be reached. "
        "While it is on, it may catch fire.",
    },
    rule=MAINS,
    caution=LICENSED,
)
DEAD = CareCase(
    name="it does nothing",
    story="The recorder does nothing when it is switched on. The edit master is in it, and {tape} "
    "with {shot} waits on the player.",
    wish="What is to be done?",
    right="Leave it off with a note on it, and fetch the person in charge",
    because="A fault in the mains part can be anything. A note keeps the next hand off until "
    "somebody comes.",
    wrong={
        "Open it, see which fuse has blown, and tell the person in charge": "Parts inside hold a "
        "charge, even with the plug out.",
        "Put a stronger fuse in its plug, and try it once more": "A fuse that is too strong sets "
        "cables on fire.",
        OTHER: "The next person would switch on a machine that can hurt them, and the joint "
        "between two recorders shows.",
    },
    held={OTHER: OTHER_RECORDER},
    rule=MAINS,
    caution=LICENSED,
)
NOTE = CareCase(
    name="a note on a machine",
    story="On the recorder is a note: “Stays off. Ask the office.” It looks all right, and "
    "{shot}, from {tape}, is all that is left to be laid.",
    wish="What becomes of that shot?",
    right="It waits until the office has said what is wrong",
    because="Whoever wrote the note knows of something that can’t be seen.",
    wrong={
        "It is laid while the person in charge stands by": "A shock or a fire is quicker than any "
        "bystander.",
        "It is laid, since one short shot can’t do any harm": "Harm needs no more than a moment.",
        OTHER_MEANWHILE: "One film, one recorder: the joint between the two would show.",
    },
    held={OTHER_MEANWHILE: OTHER_RECORDER},
    rule=MAINS,
)
LEAD = CareCase(
    name="a worn lead",
    story="A chair has rolled over the player’s mains lead for months. Bare copper shows. {tape}, "
    "with {shot}, is in the player.",
    wish="What is to be done?",
    right="Let nobody near it, and fetch the person in charge",
    because="Bare copper may be live. Who cuts the supply, and where, is for the person in "
    "charge; the lead is for somebody licensed.",
    wrong={
        "Keep everybody away while you wind sticky tape round it": "Whoever winds it touches live "
        "copper.",
        "Pull the plug out by the lead, and stand the chair on it": "The hand on the lead is the "
        "one that gets the shock.",
        "Push it out of the way, and keep the chair away from it": "There it waits for the next "
        "hand.",
    },
    rule=MAINS,
    caution=LICENSED,
)
CASES = (TEA, WET_FLOOR, SMOKE, DEAD, NOTE, LEAD)
