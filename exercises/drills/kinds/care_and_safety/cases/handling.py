"""What hands, cups and pauses do to a tape."""

from exercises.drills.kinds.care_and_safety.case import CareCase, held_by
from exercises.drills.kinds.care_and_safety.rules import HANDLE, STANDING_STILL

COUNTED = "In the machine, at the place that the counter shows"

LOOP = CareCase(
    name="a loop hangs out",
    story="The player stops by itself in the middle of {shot}. When {tape} comes out, a loop of "
    "tape hangs from its shell.",
    wish="What is to be done?",
    right="Let the loop hang, and fetch the person in charge",
    because="Somebody who has done it before may still save it, if nobody has pulled or creased "
    "it.",
    wrong={
        "Pull the loop straight with clean fingers, and play on": "Fingers leave grease, and a "
        "pull stretches tape for good.",
        "Push the loop back, and fetch the person in charge": "Pushed in, it creases, and a "
        "crease knocks against the heads.",
        "Put the tape back in, so that the machine draws it in": "The machine shuts on the loop, "
        "and creases it or tears it.",
    },
    rule=HANDLE,
)
END_OF_DAY = CareCase(
    name="the end of the day",
    story="Time is up on {room}, in the middle of {tape}, at {shot}.",
    wish="How is the tape left?",
    right="Rewound to its start, in its case, and upright",
    because="An even wind and an upright case keep its edges straight.",
    wrong={
        COUNTED: "Tape left round a drum takes a dent; and the counter finds no place once it has "
        "been set to zero.",
        "In its case, wound to that place, flat on the pile": "Flat, the turns slip, and their "
        "edges with them.",
        "Rewound to its start, upright, out of its case": "What it gets there is dust, and dust "
        "scratches tape and heads.",
    },
    held={COUNTED: held_by("counter-is-time-code")},
    rule=HANDLE,
)
STILL = CareCase(
    name="a frame that stands still",
    story="They can’t agree on where {shot} ends. For ten minutes {tape} has been in pause, and "
    "the frame stands on the screen.",
    wish="What should be done while they talk?",
    right="Press stop, so that the heads leave that place alone",
    because="In pause the heads pass over the same place again and again, and wear it. Many "
    "machines stop by themselves after some minutes, for that reason.",
    wrong={
        "Leave it in pause: a tape that does not move does not wear": "The tape stands, but the "
        "heads go on turning against it.",
        "Keep it in pause, with the monitor off, so that the heads rest": "The heads turn whether "
        "anybody sees the picture or not.",
        "Press pause off and on, so that the heads cool down": "The heads don’t get hot. They "
        "wear tape that stands before them.",
    },
    rule=STANDING_STILL,
)
CUP = CareCase(
    name="a cup on the recorder",
    story="{person} comes back with tea, and puts the cup on the recorder while {tape} is wound "
    "to {shot}.",
    wish="Where does the cup go?",
    right="Out of the room, for as long as work goes on",
    because="Spilt drink ruins machines and tapes, and beside mains it can kill.",
    wrong={
        "On the floor, beside the table": "There are leads and sockets, and feet.",
        "Back on the recorder, with a lid on it": "A lid comes off when a cup falls.",
        "On the shelf, next to the tapes": "Tapes like drink no better than machines do.",
    },
    rule=HANDLE,
)
FINGERS = CareCase(
    name="the flap of the shell",
    story="{person} wants to see whether {tape} is wound to {shot}, and is about to lift the flap "
    "where the tape lies open.",
    wish="What do you say?",
    right="Look through its window; nobody touches the tape",
    because="Fingers leave grease, grease holds dust, and dust scratches tape and heads.",
    wrong={
        "Lift it, but touch the tape at its edge only": "Along the edges lie pulses and sound.",
        "Lift it, but wear a glove, and wipe the tape": "A glove brings lint, and wiping "
        "scratches.",
        "Look by the light of a lamp held close": "Lamps are hot, and the flap stays shut.",
    },
    rule=HANDLE,
)

CASES = (LOOP, END_OF_DAY, STILL, CUP, FINGERS)
