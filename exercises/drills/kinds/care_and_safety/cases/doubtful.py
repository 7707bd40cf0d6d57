"""Tapes with a past: who looks at them before a machine does."""

from exercises.drills.kinds.care_and_safety.case import ANY_TAPE, CareCase
from exercises.drills.kinds.care_and_safety.rules import UNFIT

RUN_IN = "Let it play on: it will run itself in after a while"
IT_HOLDS = "Put it in: it has been mended, and so it holds"
NO_HARM = "Put it in: it fits, so there is no harm in looking"
INSIDE = "Play it: no sand gets to where the tape runs"

SQUEAL = CareCase(
    name="a tape that squeals",
    story="Two minutes into {tape} it begins to squeal, and {shot} drowns in streaks.",
    wish="What now?",
    right="Stop it, and have it seen before it runs again",
    because="Its coat may be coming off onto the heads. Whether it can be saved is for the person "
    "in charge; playing on makes it worse.",
    wrong={
        RUN_IN: "What squeals is tape that sticks: its coat may be coming off.",
        "Play on, but copy as much as still gives a picture": "That costs the tape, the heads, "
        "and each tape that runs over them next.",
        "Stop it, wipe it with alcohol, and have another go": "Alcohol may take off the coat, and "
        "the picture with it.",
    },
    held={RUN_IN: ANY_TAPE},
    rule=UNFIT,
)
SPLICED = CareCase(
    name="mended with household tape",
    story="{tape} comes with a letter: at {shot} it once broke, and was mended with adhesive tape "
    "from the kitchen.",
    wish="What becomes of it?",
    right="Keep it out: the person in charge sees it first",
    because="Such a join sheds glue, and its edge knocks against the heads. Somebody who knows "
    "how may make it safe for one more copy.",
    wrong={
        IT_HOLDS: "It sheds glue, and its edge knocks against the heads.",
        "Put it in, and stop it right before the join": "When it is wound or threaded, the join "
        "may pass the drum all the same.",
        "Press the join down hard, and then put it in": "The glue creeps out all the more.",
    },
    held={IT_HOLDS: ANY_TAPE},
    rule=UNFIT,
)
UNKNOWN = CareCase(
    name="a tape from a cupboard",
    story="In a cupboard lies a dusty cassette without a label. It would fit the player, and may "
    "hold {shot}, which is missing on {tape}.",
    wish="What is to be done with it?",
    right="Show it to somebody who can tell before it is put in",
    because="Nobody knows where it has been. Dust, damp and mould get onto the heads, and from "
    "them onto every tape.",
    wrong={
        NO_HARM: "Dust and mould do harm before anything is to be seen.",
        "Knock the dust out of it, and put it in then": "The dust that matters lies inside, on "
        "the tape.",
        "Put it into the recorder, to spare the player": "The recorder’s heads are harmed as "
        "well, and one wrong switch wipes it.",
    },
    held={NO_HARM: ANY_TAPE},
    rule=UNFIT,
)
SAND = CareCase(
    name="sand in the case",
    story="The case of {tape}, with {shot}, fell open on the beach. Sand trickles out of it, and "
    "some is on the shell.",
    wish="What is to be done with it?",
    right="Shut it in its case again, and report it",
    because="A grain between head and tape scratches both. Whoever takes it out does so away from "
    "the machines.",
    wrong={
        INSIDE: "Sand gets in through every gap of the shell, and scratches tape and heads.",
        "Shake it, blow into it from all sides, and play it": "That drives grains further in.",
        "Rinse it, let it dry for a night, and play it": "Water brings damp in, and leaves the "
        "sand where it dries.",
    },
    held={INSIDE: ANY_TAPE},
    rule=UNFIT,
)

CASES = (SQUEAL, SPLICED, UNKNOWN, SAND)
