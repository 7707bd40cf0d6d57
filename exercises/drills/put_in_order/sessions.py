"""Beginning and ending a session."""

from exercises.drills.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.rules import LEAVE_IN_ORDER, ONE_RECORDER

START = Procedure(
    name="begin a session",
    task="Yesterday the film got as far as {code}. Begin today’s session; the next shot is "
    "{shot}, from {tape}, which came out of a cold van.",
    steps={
        "sheet": "Read on the edit sheet which recorder the film was laid on, and go to that bench",
        "rest": "Make sure that {tape} has lain here, sealed in its case, since yesterday",
        "hands": "Take the tapes from their cases with clean hands, and put them in",
        "end": "Play the last minute of the film, and look at its end",
        "set": "Set the player up for {tape}",
        "edit": "Make the first edit",
    },
    rules=(
        Before(
            "sheet",
            "edit",
            "No two recorders are quite alike: the joint may show where one takes over.",
            critical=True,
        ),
        Before(
            "rest",
            "hands",
            "A cold tape draws dew, and a damp tape sticks to the drum.",
            critical=True,
        ),
        Before("hands", "end", "A tape must be in a machine before it plays."),
        Before("end", "edit", "A bad end is mended before the next shot joins it."),
        Before("set", "edit", "What is copied wrong stays wrong.", critical=True),
    ),
    flaws=(
        Flaw(belief="any-tape-plays", step="rest"),
        Flaw(belief="recorders-alike", step="sheet"),
        Flaw(belief="replay-repairs", step="set", after="edit"),
        Flaw(belief="counter-is-time-code", step="zero", after="hands"),
    ),
    rule=ONE_RECORDER,
    decoys={
        "zero": (
            "Set the counter to zero, and find yesterday’s time codes by it",
            "the counter counts from where it was set to zero; time code is on the tape",
        ),
    },
)
END = Procedure(
    name="end a session",
    task="The last shot of the day, {shot}, has just been assembled; the film ends at {code}. "
    "End the session. {tape} is still on the player.",
    steps={
        "look": "Play the last joint, and mend it if it is bad",
        "note": "Write on the edit sheet where the film ends, in time code, and which recorder "
        "laid it",
        "rewind": "Rewind both tapes to the start",
        "take": "Take both tapes out",
        "case": "Put the tapes in their cases, labelled, and stand them upright",
        "off": "Switch the machines off, as the workshop’s own rules say",
    },
    rules=(
        Before(
            "look",
            "rewind",
            "The next people can’t see that a joint is bad, and will build on it.",
            critical=True,
        ),
        Before("note", "rewind", "Once it is rewound, the end must be searched for again."),
        Before("rewind", "take", "A tape stopped half-way is kept with an uneven edge."),
        Before("take", "case", "A tape can’t go into its case while it is threaded."),
        Before("take", "off", "A machine without power may not give the tape back."),
    ),
    flaws=(
        Flaw(belief="mend-later", step="look"),
        Flaw(belief="counter-is-time-code", step="counter", after="note"),
        Flaw(belief="recorders-alike", step="free", after="note"),
    ),
    rule=LEAVE_IN_ORDER,
    decoys={
        "counter": (
            "Write the counter’s reading there, to find the place by tomorrow",
            "tomorrow the counter will count from somewhere else",
        ),
        "free": (
            "Ask for whichever bench is free tomorrow",
            "one project, one recorder: the joint may show where another takes over",
        ),
    },
)
