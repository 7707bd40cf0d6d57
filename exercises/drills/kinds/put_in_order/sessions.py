"""Beginning and ending a session."""

from exercises.drills.judging.rules import LEAVE_IN_ORDER, ONE_RECORDER
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import (
    COUNTER,
    MEND_AT_THE_END,
    NEW_TAPE,
)

START = StandingProcedure(
    name="begin a session",
    task="Yesterday the film got as far as {code}. Begin today’s session; the next shot is "
    "{shot}, from {tape}, which came out of a cold van.",
    steps={
        "sheet": "Read on the edit sheet which recorder laid the film, and go there",
        "rest": "Make sure that {tape} has lain here, sealed in its case, since yesterday",
        "hands": "Take the tapes out with clean hands, and put them in",
        "end": "Play the film’s last minute, and see that its end is good",
        "set": "Set the player up for {tape}",
        "edit": "Make the first edit",
    },
    rules=(
        Before(
            "sheet",
            "edit",
            "No two recorders are quite alike: the joint may show.",
            critical=True,
        ),
        Before(
            "rest",
            "hands",
            "A cold tape draws dew, and a damp tape sticks to the drum.",
            critical=True,
        ),
        Before("hands", "end", "A tape must be in a machine before it plays."),
        Before("hands", "set", "Only a tape that plays shows where tracking is right."),
        Before("end", "edit", "A bad end is mended before anything joins it."),
        Before("set", "edit", "What is copied wrong stays wrong.", critical=True),
    ),
    flaws=(
        Flaw(belief="any-tape-plays", step="rest"),
        Flaw(belief="replay-repairs", step="set", after="edit"),
    ),
    decoys=(
        Decoy(
            step="new-tape",
            text=NEW_TAPE,
            why="the film goes on where it ended, on the tape that it is on",
        ),
        Decoy(
            step="free",
            text="Sit down at whichever bench is free, and begin",
            why="one project, one recorder: the joint may show where another takes over",
            belief="recorders-alike",
            instead="sheet",
        ),
    ),
    needs={"edit": "It is what the day was begun for."},
    otherwise={
        "hands": "With clean hands, put both tapes in",
        "end": "Watch how the film ends so far, and whether that is good",
    },
    rule=ONE_RECORDER,
)
END = StandingProcedure(
    name="end a session",
    task="The last shot of the day, {shot}, has just been assembled; the film ends at {code}. "
    "End the session. {tape} is still in the player.",
    steps={
        "look": "Play the last joint, and mend it if it is bad",
        "note": "Write on the edit sheet where the film ends, in time code",
        "rewind": "Rewind both tapes to the start",
        "take": "Take both tapes out",
        "case": "Put them into their cases, labelled, and stand them upright",
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
    flaws=(),
    decoys=(
        Decoy(
            step="counter",
            text=COUNTER,
            why="tomorrow the counter will count from somewhere else",
            belief="counter-is-time-code",
            instead="note",
        ),
        Decoy(
            step="free",
            text="Ask for whichever bench is free tomorrow",
            why="one project, one recorder: the joint may show where another takes over",
            belief="recorders-alike",
            after="note",
        ),
        Decoy(
            step="later",
            text=MEND_AT_THE_END,
            why="what is laid after a bad edit depends on it: it is made again at once",
            belief="mend-later",
            instead="look",
        ),
    ),
    needs={
        "case": "Dust and light fingers find a tape that lies about.",
        "off": "A bench that is left on wears, and nobody watches it.",
    },
    otherwise={
        "case": "Case and label them, and stand them upright",
        "rewind": "Wind both tapes back to their start",
    },
    rule=LEAVE_IN_ORDER,
)
SESSIONS = (START, END)
