"""Putting a cassette in, taking it out, and what gets stuck on the way."""

from exercises.drills.kinds.care_and_safety.case import LICENSED, OTHER_RECORDER, CareCase
from exercises.drills.kinds.care_and_safety.rules import CASSETTE, CLOGGED, MAINS, STUCK, TURNING

OTHER = "Stop, and finish the day on the other recorder"

RESISTS = CareCase(
    name="it does not go in",
    story="Half-way into the player, {tape}, with {shot}, meets something and goes no further.",
    wish="What is to be done?",
    right="Draw it back, and look which way up it belongs",
    because="A cassette goes in one way only, and never by force. If it still meets something, "
    "there may be a tape in there: ask.",
    wrong={
        "Press on its middle until the machine draws it in": "Force bends the part that carries "
        "the tape in.",
        "Hold the flap of the slot open with a pencil": "Nothing but a cassette goes into a slot.",
        "Switch the machine off, and press it in then": "Without power the machine can’t take it.",
    },
    rule=CASSETTE,
)
COMES_OUT = CareCase(
    name="taking it out",
    story="{tape} has been copied from, up to {shot}, and is rewound. {person} has pressed eject, "
    "and the shell begins to move.",
    wish="When does a hand take hold of it?",
    right="Once it has come out and stands still",
    because="Until then the machine is still drawing tape back and moving the shell.",
    wrong={
        "As soon as its edge can be seen": "The machine still moves it, and may hold its tape.",
        "At once, to help it along": "A machine does not know that you pull, and tape tears.",
        "Once the power has been switched off": "Without power it stops half-way out.",
    },
    rule=CASSETTE,
)
STUCK_TAPE = CareCase(
    name="a stuck tape",
    story="{tape}, with {shot}, does not come out. The player whirs twice and stops. There is no "
    "smell and no smoke.",
    wish="What is to be done?",
    right="Hands off; leave it switched on, and fetch the person in charge",
    because="Its tape may lie round the drum. With power, somebody who knows the machine may "
    "still get it back whole.",
    wrong={
        "Hands off; switch it off at the wall, and fetch the person in charge": "There is no "
        "danger, and without power the tape stays where it is, half-threaded.",
        "Leave it switched on, ease the tape out, and put it in its case": "It can tear; and what "
        "turns does not feel fingers.",
        "Switch it off at the wall, ease the tape out, and report it": "A tape round the drum "
        "tears when it is pulled.",
    },
    rule=STUCK,
)
CLIP = CareCase(
    name="a paper clip in the vents",
    story="A paper clip drops through the vents of the recorder, which is on. {tape}, with "
    "{shot}, is in the player.",
    wish="What is to be done?",
    right="Switch it off at the wall, leave the clip in, and fetch the person in charge",
    because="Metal inside can join what must never be joined. Only somebody licensed opens the "
    "machine.",
    wrong={
        "Leave it switched on, leave the clip in, and fetch the person in charge": "Metal inside "
        "can set it on fire or make its case live: the supply goes first.",
        "Switch it off at the wall, shake the clip out, and go on": "A machine is not lifted or "
        "shaken, and the clip may slip deeper.",
        "Leave it switched on, and hook the clip out with a bent wire": "Whoever holds the wire "
        "may touch what kills.",
    },
    rule=MAINS,
    caution=LICENSED,
)
CLOG = CareCase(
    name="snow all at once",
    story="In the middle of the day snow covers {shot}, from {tape}; the sound is as before. "
    "Tracking clears nothing, and the practice tape, which was good this morning, looks the same.",
    wish="What is to be done?",
    right="Stop, and have the heads cleaned by someone licensed",
    because="Two tapes look alike, so it is not the tape: dirt sits on the heads. Then look back "
    "for the last good edit: the recorder may have laid noise since.",
    wrong={
        "Keep on, and ask the person in charge in the evening": "It lays noise on the edit "
        "master, and scratches each tape that it runs over.",
        "Stop, and run a dry cloth over the drum": "Only licensed people open a machine, for "
        "cleaning too.",
        OTHER: "One film, one recorder: the joint between the two would show.",
    },
    held={OTHER: OTHER_RECORDER},
    rule=CLOGGED,
)
LOOKING_IN = CareCase(
    name="looking into the slot",
    story="{person} wants to see how {tape} is threaded, and bends over the slot, scarf hanging "
    "down, while it is wound to {shot}.",
    wish="What do you say?",
    right="Step back, and put away what hangs",
    because="What turns takes hair, scarves and cords along before a hand can stop it.",
    wrong={
        "Put your hand before the slot": "Fingers are caught as well.",
        "Go on, but keep the lamp outside": "What hangs down is caught with or without a lamp.",
        "Hold the flap up, to see more of it": "Nothing but a cassette goes into a slot.",
    },
    rule=TURNING,
)
CASES = (RESISTS, COMES_OUT, STUCK_TAPE, CLIP, CLOG, LOOKING_IN)
