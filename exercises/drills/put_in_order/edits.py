"""Making an edit, mending one, going on to another source tape."""

from exercises.drills.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.rules import AT_ONCE, NO_PULSES, RUN_UP, SET_UP_FIRST

ASSEMBLE = Procedure(
    name="assemble a shot",
    task="The film is laid as far as {code}. Assemble {shot} to it, from {tape}.",
    steps={
        "find": "Find the frame on the edit master where the last shot is to end",
        "in": "Find the edit in on {tape}, at least a run-up after the start of the take",
        "player": "Wind the player back by the pre-roll",
        "recorder": "Wind the recorder back by the pre-roll, over the end of the last shot",
        "record": "Run both machines, and record from the edit in",
        "look": "Play the joint and look at it",
        "next": "Lay the next shot",
    },
    rules=(
        Before("find", "recorder", "The pre-roll is counted from the edit in."),
        Before("in", "player", "The pre-roll is counted from the edit in."),
        Before(
            "player",
            "record",
            "A player that isn’t locked gives an unsteady picture.",
            critical=True,
        ),
        Before(
            "recorder",
            "record",
            "Without run-up on the edit master the new pulses begin anew, and the picture rolls.",
            critical=True,
        ),
        Before("record", "look", "There is no joint to look at before it is recorded."),
        Before(
            "look",
            "next",
            "A bad joint under later shots costs all of them: look at once.",
            critical=True,
        ),
    ),
    flaws=(
        Flaw(belief="no-source-run-up", step="player"),
        Flaw(belief="no-master-run-up", step="recorder"),
        Flaw(belief="mend-later", step="look", after="next"),
    ),
    rule=RUN_UP,
    decoys={},
)
INSERT = Procedure(
    name="insert a picture",
    task="The edit master plays well as far as {code}. Within it, put {shot} over the picture, "
    "from {tape}, and leave the sound.",
    steps={
        "pulses": "Play the edit master and see that pulses run on through the whole place",
        "mode": "Choose insert, picture alone",
        "places": "Note edit in and edit out, and the edit in on {tape}",
        "back": "Wind both machines back by the pre-roll",
        "record": "Run both machines, record, and stop at the edit out",
        "look": "Play from before the edit in to after the edit out",
    },
    rules=(
        Before(
            "pulses",
            "record",
            "An insert lays no pulses; where there are none, what it lays can’t be played.",
            critical=True,
        ),
        Before(
            "mode",
            "record",
            "An assemble would take the sound too, and wipe tape past its end.",
            critical=True,
        ),
        Before("places", "back", "The pre-roll is counted from the edit in."),
        Before("back", "record", "Both machines must be locked where the edit begins."),
        Before("record", "look", "There is nothing to look at before it is recorded."),
    ),
    flaws=(
        Flaw(belief="insert-lays-pulses", step="pulses"),
        Flaw(belief="insert-ends-ragged", step="whole", after="places"),
        Flaw(belief="insert-pushes-along", step="later", after="look"),
    ),
    rule=NO_PULSES,
    decoys={
        "whole": (
            "Move the edit out to the end of the shot that is there",
            "where pulses run on, an insert may end inside a shot",
        ),
        "later": (
            "Write down how much later everything after it now lies",
            "nothing moves: an insert records over what is there",
        ),
    },
)
MEND = Procedure(
    name="mend a rolling joint",
    task="{shot}, assembled at {code}, rolls for a second at its first frames. It is the last "
    "shot so far. Mend it.",
    steps={
        "note": "Note the frame where the fault begins",
        "cause": "Look for the cause in the edit: which machine had too little run-up?",
        "cue": "Find again the frame where the shot before is to end",
        "back": "Wind both machines back by the pre-roll",
        "again": "Assemble the shot again, at that frame",
        "look": "Play the joint and look at it",
        "next": "Lay the next shot",
    },
    rules=(
        Before("note", "cause", "First see where it is, then why."),
        Before("cause", "again", "Made the same way, it will roll again."),
        Before("cue", "back", "The pre-roll is counted from the edit in."),
        Before(
            "back",
            "again",
            "Without run-up the pulses begin anew once more.",
            critical=True,
        ),
        Before("again", "look", "There is no new joint to look at yet."),
        Before(
            "again",
            "next",
            "An assemble over this joint later would wipe into the next shot.",
            critical=True,
        ),
        Before("look", "next", "Go on when the joint is good, not before."),
    ),
    flaws=(
        Flaw(belief="mend-later", step="again", after="next"),
        Flaw(belief="tape-fault", step="new-tape", after="note"),
        Flaw(belief="gap-heals", step="gap", after="cue"),
    ),
    rule=AT_ONCE,
    decoys={
        "new-tape": (
            "Blame the tape, and put the edit master away for a new one",
            "a disturbance at an edit comes from the edit",
        ),
        "gap": (
            "Move the edit in a few frames later, so that the shots don’t touch",
            "a hole stays a hole, and the picture rolls after it",
        ),
    },
)
NEXT_TAPE = Procedure(
    name="go on to another source tape",
    task="The last shot came from another camera; the next, {shot}, is on {tape}. "
    "Change the source tape and lay it at {code}.",
    steps={
        "thread": "Put the old source tape in its case, and thread {tape}",
        "tracking": "Set the player’s tracking for {tape}",
        "skew": "Set skew for {tape}",
        "in": "Find the edit in, at least a run-up after the start of the take",
        "back": "Wind both machines back by the pre-roll",
        "record": "Record",
        "look": "Play the joint and look at it",
    },
    rules=(
        Before("thread", "tracking", "Only a tape that plays shows where tracking is right."),
        Before("tracking", "skew", "As long as a noise band shows, verticals can’t be judged."),
        Before("thread", "in", "The edit in is a place on the new tape."),
        Before("in", "back", "The pre-roll is counted from the edit in."),
        Before(
            "skew",
            "record",
            "Bent verticals are copied with the picture, and stay in the copy.",
            critical=True,
        ),
        Before("back", "record", "Both machines must be locked where the edit begins."),
        Before("record", "look", "There is no joint to look at before it is recorded."),
    ),
    flaws=(
        Flaw(belief="set-once", step="tracking"),
        Flaw(belief="replay-repairs", step="skew", after="record"),
        Flaw(belief="no-source-run-up", step="first", after="thread"),
    ),
    rule=SET_UP_FIRST,
    decoys={
        "first": (
            "Put the edit in at the first frame of the take, to lose nothing",
            "the player needs run-up inside the take before the edit in",
        ),
    },
)
