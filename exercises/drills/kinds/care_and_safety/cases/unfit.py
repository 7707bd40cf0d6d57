"""Tapes that fit, and that are not played as they are."""

from exercises.drills.kinds.care_and_safety.case import ANY_TAPE, CareCase
from exercises.drills.kinds.care_and_safety.rules import UNFIT

DRIED_BY_PLAYING = "Play it once, slowly, so that it dries as it runs"
WIPED_BY_PLAYING = "Play it as it is: the drum wipes it clean"
PLAYED_OVER = "It is played: only that place will look disturbed"
SHELL = "Play it: what counts is the tape, and that is whole"
STRAIGHT = "Play it: the machine lays the turns straight by itself"

WET = CareCase(
    name="wet through",
    story="The bag stood in the rain. {tape}, the only tape with {shot}, is wet at one end.",
    wish="What is to be done with it?",
    right="Mark it, leave it as it is, and have it seen to",
    because="Wet tape sticks to the drum and tears. How it is dried, if it can be, is for "
    "somebody who has done it before.",
    wrong={
        DRIED_BY_PLAYING: "It would stick to the drum on its first turn.",
        "Dry it on a heater, and ask when it may be played": "Heat bends the shell and sticks the "
        "layers together.",
        "Open its shell, and hang it up until it can be played": "Opened by hand, it gets "
        "creases, dust and fingers.",
    },
    held={DRIED_BY_PLAYING: ANY_TAPE},
    rule=UNFIT,
)
MOULD = CareCase(
    name="white threads",
    story="{tape}, with {shot}, smells of cellar. Through its window, white threads are seen on "
    "the edge of the tape.",
    wish="What is to be done with it?",
    right="Shut it in its case, away from other tapes, and report it",
    because="Mould gets onto the heads, and from them onto every tape after it. Its dust is bad "
    "to breathe.",
    wrong={
        WIPED_BY_PLAYING: "What it wipes off stays on the heads, and gets onto the next tapes.",
        "Wipe the threads off with a dry cloth, and then play it": "That raises their dust, and "
        "leaves what is between the layers.",
        "Put it in the sun for a day, and report it if they come back": "The sun ruins tape "
        "faster than mould does.",
    },
    held={WIPED_BY_PLAYING: ANY_TAPE},
    rule=UNFIT,
)
CREASED = CareCase(
    name="creased",
    story="When {tape} came out of the player, a piece of it was creased like paper. On it is "
    "{shot}.",
    wish="What becomes of that tape?",
    right="It is not played before the person in charge has seen it",
    because="A crease knocks against heads that pass it many times a second, and may break one.",
    wrong={
        PLAYED_OVER: "The crease knocks against the heads at every turn, and may break one.",
        "It is smoothed with a clean fingernail, and then played": "A crease can’t be smoothed "
        "away, and fingers leave grease.",
        "It is wound past that place by hand, and then played": "Hands leave grease and new "
        "creases; and the place comes by again when it is rewound.",
    },
    held={PLAYED_OVER: ANY_TAPE},
    rule=UNFIT,
)
DROPPED = CareCase(
    name="a broken shell",
    story="{tape}, the only tape with {shot}, has fallen on the floor. A corner of its shell has "
    "broken off.",
    wish="What is to be done with it?",
    right="Label it, play it nowhere, and ask for a new shell",
    because="A broken shell may jam, or tear the tape. Somebody who has done it before can put "
    "the tape into another.",
    wrong={
        SHELL: "It runs through the shell: a broken one can jam it or tear it.",
        "Copy it now, before more of the shell can break": "Playing it is what may harm it now.",
        "Glue the corner, and play it when the glue has set": "Glue runs to where the tape goes, "
        "and sticks its layers.",
    },
    held={SHELL: ANY_TAPE},
    rule=UNFIT,
)
UNEVEN = CareCase(
    name="turns that stand out",
    story="Somebody stopped {tape}, with {shot}, in the middle of winding. Through its window, "
    "some turns stand out above the others.",
    wish="What is to be done with it?",
    right="Ask the person in charge before it is wound or played",
    because="Turns that stand out are bent at the edge, where pulses or sound lie. How such a "
    "tape is wound straight depends on the machine.",
    wrong={
        STRAIGHT: "It may bend their edge for good, and with it pulses or sound.",
        "Wind it fast to and fro until the turns lie straight": "Fast winding is what made them "
        "stand out.",
        "Knock it flat on the table a few times, and play it": "That bends the edges of what "
        "stands out.",
    },
    held={STRAIGHT: ANY_TAPE},
    rule=UNFIT,
)

CASES = (WET, MOULD, CREASED, DROPPED, UNEVEN)
