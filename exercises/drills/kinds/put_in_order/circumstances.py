"""What is special about an edit this time."""

from exercises.drills.judging.rules import (
    FIXED_POSITION,
    LEAVE_IN_ORDER,
    LEVEL_IS_LAID,
    ONE_RECORDER,
    OTHERS_TAPE,
    PROTECTED,
    ROOM_FOR_RUN_UP,
    SET_UP_FIRST,
    SPEECH_BY_HAND,
)
from exercises.drills.kinds.care_and_safety.rules import WARM_UP
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.job import Circumstance
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.steps import (
    BY_HAND,
    COUNTER,
    FIRST_FRAME,
    FIXED,
    MOVE_IN,
    TUNE_PLAYER,
    TUNE_RECORDER,
)

INTO = "Put {tape} into the player, and wait until it is threaded"

CIRCUMSTANCES = (
    Circumstance(
        name="with nothing special",
        told="Both machines are set up, and both tapes are in.",
        flaws=(Flaw(belief="mend-later", step="look"),),
    ),
    Circumstance(
        name="from a cold tape",
        told="{tape} came in from the frost an hour ago.",
        first={"rest": "Leave {tape} sealed in its case until tomorrow", "in": INTO},
        rules=(
            Before(
                "rest",
                "in",
                "A cold tape draws dew, and a damp tape sticks to the drum.",
                critical=True,
            ),
            Before("in", "mark", "Its edit in is found by playing it."),
        ),
        flaws=(Flaw(belief="any-tape-plays", step="rest"),),
        decoys=(
            Decoy(
                step="feel",
                text="Feel its case, and go on when that is warm",
                why="inside, a wound tape warms far more slowly than its case",
            ),
        ),
        otherwise={
            "rest": "Let {tape} lie overnight, sealed in its case",
        },
        rule=WARM_UP,
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="from another camera",
        told="{tape} comes from another camera than the last one, and is in the player.",
        first={"tracking": TUNE_PLAYER, "skew": "Set skew until uprights stand straight"},
        rules=(
            Before("tracking", "skew", "While a noise band shows, uprights can’t be judged."),
            Before(
                "tracking",
                "record",
                "A noise band is copied, and stays in the copy.",
                critical=True,
            ),
            Before("skew", "record", "What leans is copied so, and stays so.", critical=True),
        ),
        flaws=(
            Flaw(belief="set-once", step="tracking"),
            Flaw(belief="replay-repairs", step="skew", after="record"),
        ),
        otherwise={
            "skew": "Turn skew, till nothing leans at the upper edge",
        },
        rule=SET_UP_FIRST,
        only=frozenset({"picture"}),
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="with another white",
        told="On {tape} white stands higher than in what is laid.",
        first={
            "white": "Find the frame with the brightest white of the shot",
            "level": "Set the picture level, so that this white stands at its mark",
        },
        rules=(
            Before("white", "level", "The level is set on the brightest white, so find it first."),
            Before("level", "rehearse", "A rehearsal is for what was set as well."),
            Before(
                "level",
                "record",
                "What the copy has clipped, no playback brings back.",
                critical=True,
            ),
        ),
        flaws=(Flaw(belief="level-is-seen-later", step="level", after="record"),),
        otherwise={
            "white": "Look for the brightest white that the shot has",
            "level": "Bring that white to its mark with the picture level",
        },
        rule=LEVEL_IS_LAID,
        only=frozenset({"picture"}),
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="with a softer voice",
        told="What is heard on {tape} was recorded softer than what is laid.",
        first={"listen": "Play it through, and find its loudest words", "by-hand": BY_HAND},
        rules=(
            Before("listen", "by-hand", "The level is set on the loudest words: find them first."),
            Before(
                "by-hand",
                "record",
                "Too weak, it lies in the hiss; too strong, it stays distorted.",
                critical=True,
            ),
        ),
        decoys=(
            Decoy(
                step="gain",
                text="Switch automatic gain on, and go by that",
                why="automatic gain lifts the room in every pause",
                belief="agc-evens-out",
                instead="by-hand",
            ),
            Decoy(
                step="hot",
                text="Set the sound level as high as the meter shows",
                why="past the end of the scale, words distort for good",
                belief="hotter-is-better",
                instead="by-hand",
            ),
        ),
        otherwise={
            "listen": "Hear the take once, for its loudest words",
        },
        rule=SPEECH_BY_HAND,
        only=frozenset({"sound"}),
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="on another recorder’s tape",
        told="The edit master was made by another workshop’s recorder.",
        first={
            "ask": "Ask what may be recorded on it, and where",
            "trial": "Try the joint on a copy of that place",
        },
        rules=(
            Before("ask", "record", "Such a tape is asked about before it is touched."),
            Before(
                "trial",
                "record",
                "No two recorders are quite alike: a trial shows it, and costs nothing.",
                critical=True,
            ),
        ),
        flaws=(Flaw(belief="recorders-alike", step="trial"),),
        otherwise={
            "ask": "Have somebody say whether it may be recorded on",
            "trial": "Make the same joint on a copy first",
        },
        rule=OTHERS_TAPE,
        only=frozenset({"insert"}),
        never=frozenset({"prepared"}),
    ),
    Circumstance(
        name="first of the day",
        told="It is the first edit of the day; the film was laid on other days.",
        first={
            "sheet": "Read on the edit sheet which recorder laid the film, and go there",
            "end": "Play the film’s last minute, and see that its end is good",
        },
        rules=(
            Before(
                "sheet",
                "record",
                "No two recorders are quite alike: the joint may show.",
                critical=True,
            ),
            Before("sheet", "end", "At another bench, it would be seen on another machine."),
            Before("end", "record", "A bad end is mended before anything joins it."),
        ),
        flaws=(Flaw(belief="recorders-alike", step="sheet"),),
        otherwise={
            "sheet": "Look up the film’s recorder on the edit sheet, and go to it",
            "end": "Watch how the film ends so far, and whether that is good",
        },
        rule=ONE_RECORDER,
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="last of the day",
        told="It is the last edit of the day.",
        last={
            "note": "Write on the edit sheet where the film ends, in time code",
            "out": "Rewind both tapes, and take them out",
        },
        rules=(
            Before("look", "out", "Whoever comes next can’t see that it is bad.", critical=True),
            Before("look", "note", "Until it is seen, nobody knows that the film ends there."),
            Before("note", "out", "Once it is rewound, the end must be searched for again."),
        ),
        flaws=(Flaw(belief="mend-later", step="look"),),
        decoys=(
            Decoy(
                step="counter",
                text=COUNTER,
                why="tomorrow the counter will count from somewhere else",
                belief="counter-is-time-code",
                instead="note",
            ),
        ),
        needs={"out": "A tape is kept rewound, in its case, and not in a machine."},
        otherwise={
            "note": "Enter the time code of the film’s end on the edit sheet",
            "out": "Take both tapes out, rewound",
        },
        rule=LEAVE_IN_ORDER,
    ),
    Circumstance(
        name="on a bench that others have left",
        told="The recorder stands as the last people left it; they had played an old tape on it.",
        first={
            "fixed": FIXED,
            "spare": "Record half a minute on a spare tape, and play that",
        },
        rules=(
            Before("fixed", "spare", "The trial is to show how the recorder will record."),
            Before(
                "fixed",
                "record",
                "Turned, it lays its tracks where no other machine looks for them.",
                critical=True,
            ),
            Before("spare", "record", "A fault that the trial shows would be on the film."),
        ),
        decoys=(
            Decoy(
                step="tune",
                text=TUNE_RECORDER,
                why="it stays at its fixed position while it records",
                belief="tune-the-recorder",
                instead="fixed",
            ),
        ),
        otherwise={
            "fixed": "Bring the recorder’s tracking back to its click",
            "spare": "Make a trial on a spare tape, and look at that",
        },
        rule=FIXED_POSITION,
        never=frozenset({"again"}),
    ),
    Circumstance(
        name="from the shot log",
        told="Nobody remembers where the take begins.",
        first={"log": "Read in the shot log where the take begins, and add a run-up"},
        last={"write": "Write the marks on the edit sheet, as they were used"},
        rules=(
            Before("log", "mark", "An edit in closer to the start has no run-up."),
            Before("look", "write", "Only an edit that is good is ticked off."),
        ),
        decoys=(
            Decoy(
                step="first-frame",
                text=FIRST_FRAME,
                why="the player needs a run-up inside the take before the edit in",
                belief="no-source-run-up",
                instead="log",
            ),
        ),
        needs={"write": "Without it, nobody can make the same edit again."},
        otherwise={
            "log": "Look up the take’s start in the shot log, and count a run-up from there",
            "write": "Enter the edit on the edit sheet, with its marks",
        },
        rule=ROOM_FOR_RUN_UP,
    ),
    Circumstance(
        name="begun too soon",
        told="In the first rehearsal, {tape} comes in some frames too soon.",
        again={
            "move": MOVE_IN,
            "once-more": "Rehearse once more: run it again, with nothing recorded",
        },
        rules=(
            Before("rehearse", "move", "It is the rehearsal that shows by how much."),
            Before("move", "once-more", "Whether the cut is right now, only a rehearsal shows."),
            Before("once-more", "record", "A cut that is wrong costs nothing in a rehearsal."),
        ),
        flaws=(Flaw(belief="mend-later", step="look"),),
        otherwise={
            "once-more": "Rehearse once more, for the new mark",
        },
        never=frozenset({"again", "in-step"}),
    ),
    Circumstance(
        name="from an unprotected tape",
        told="{tape} lies in its case, as it came out of the camera.",
        first={
            "protect": "Set its tab so that nothing can record on it, and read its label",
            "in": INTO,
        },
        rules=(
            Before(
                "protect",
                "in",
                "In a machine, one wrong switch is enough to record over it.",
                critical=True,
            ),
            Before("in", "mark", "Its edit in is found by playing it."),
        ),
        flaws=(Flaw(belief="mend-later", step="look"),),
        otherwise={
            "protect": "Read its label aloud, and make it safe from recording",
        },
        rule=PROTECTED,
        never=frozenset({"again"}),
    ),
)
