"""What is done before the bench: shooting a take, and the paper edit."""

from exercises.drills.judging.rules import OUT_LESS_IN, ROOM_FOR_RUN_UP
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import FIRST_FRAME, LATER_ON, MOVE_IN

SHOOT = StandingProcedure(
    name="shoot a take",
    task="For the film, {shot} is to be shot once more. One person holds the camera, and another "
    "writes.",
    steps={
        "press": "Press record, and wait until the camera shows that it records",
        "sheet": "Hold the sheet with tape and take before the lens",
        "ten": "Count to ten, in silence",
        "act": "Let it happen",
        "five": "Hold still, and count to five",
        "stop": "Stop, and log its start, its moment and its end",
    },
    rules=(
        Before("press", "sheet", "Before that, the sheet is on no tape."),
        Before("press", "ten", "Only a tape that runs becomes run-up."),
        Before("sheet", "act", "It falls into the run-up, where it costs nothing."),
        Before("ten", "act", "Without run-up, its first seconds can’t be used."),
        Before("act", "five", "The cut may fall behind it, and the machines run on there."),
        Before("five", "stop", "What isn’t recorded can’t be added at the bench."),
    ),
    flaws=(Flaw(belief="no-source-run-up", step="ten"),),
    decoys=(
        Decoy(
            step="share",
            text="Begin the next take at its last frame, to share the run-up",
            why="count on no pulses that run on from take to take, even where they touch",
            belief="touching-takes-share-pulses",
            after="stop",
        ),
        Decoy(
            step="watch",
            text="Play it back at once, and stop where you like it",
            why="the next take would begin inside this one, and wipe its end",
        ),
    ),
    needs={"stop": "A take that is not logged has to be searched for."},
    otherwise={
        "ten": "Wait ten seconds, and say nothing",
        "five": "Don’t move for five seconds more",
    },
    rule=ROOM_FOR_RUN_UP,
)
PAPER = StandingProcedure(
    name="write a paper edit",
    task="All tapes are logged in time code. Write the paper edit of a scene that begins with "
    "{shot}, from {tape}, before the bench is booked.",
    steps={
        "choose": "Choose the shots, and put them in the order of the film",
        "marks": "Write down edit in and edit out of each, a run-up into its take or more",
        "lengths": "Take the edit in from the edit out: that is the length",
        "places": "Add up the lengths: that is where each begins",
        "aloud": "Read it aloud, against a watch",
        "book": "Count edits and tape changes, and book for twice as long",
    },
    rules=(
        Before("choose", "marks", "A shot is chosen before its marks are."),
        Before("marks", "lengths", "A length is worked out from its marks."),
        Before("lengths", "places", "A place is worked out from the lengths before it."),
        Before("places", "aloud", "It is read as the film will run."),
        Before("aloud", "book", "What is changed on paper costs no time at the bench."),
    ),
    flaws=(),
    decoys=(
        Decoy(
            step="first-frame",
            text=FIRST_FRAME,
            why="the player needs a run-up inside the take before the edit in",
            belief="no-source-run-up",
            instead="marks",
        ),
        Decoy(
            step="one-more",
            text="Add a frame to each length, for the edit out",
            why="the edit out is the first frame that no longer belongs",
            belief="out-is-last-frame",
            after="lengths",
        ),
        Decoy(
            step="later",
            text=LATER_ON,
            why="nothing is laid yet: on paper, places are added up once",
        ),
        Decoy(
            step="late",
            text=MOVE_IN,
            why="late marks leave holes; the places follow from the lengths alone",
            belief="late-is-safer",
            after="places",
        ),
    ),
    needs={"book": "Without it, the film is planned, and the bench is taken."},
    otherwise={
        "choose": "Pick the shots, in the order of the film",
        "aloud": "Speak it through, with a watch in hand",
    },
    rule=OUT_LESS_IN,
)
PLANNED = (SHOOT, PAPER)
