"""Taking in a tape, and logging one."""

from exercises.drills.judging.rules import COUNTER as COUNTER_RULE
from exercises.drills.judging.rules import SET_UP_FIRST
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import (
    COUNTER,
    FIRST_FRAME,
    LOOK,
    WIND_ONCE,
)

ARRIVE = StandingProcedure(
    name="take in a tape",
    task="On a frosty day {tape} comes by post, with {shot} on it. Take it in, and make the copy.",
    steps={
        "rest": "Leave it sealed in its case until tomorrow, then look it over",
        "protect": "Set its tab so that nothing can record on it",
        "in": "Put it into the player, and wait until it is threaded",
        "set": "Set the player up for it: tracking, skew, levels",
        "copy": "Record the copy",
        "look": LOOK,
    },
    rules=(
        Before(
            "rest",
            "in",
            "A cold tape draws dew, and a damp or broken one sticks or jams.",
            critical=True,
        ),
        Before(
            "protect",
            "in",
            "In a machine, one wrong switch is enough to record over it.",
            critical=True,
        ),
        Before("in", "set", "Only a tape that plays shows where tracking is right."),
        Before("set", "copy", "What is copied wrong stays wrong.", critical=True),
        Before("copy", "look", "There is nothing to look at before it is recorded."),
    ),
    flaws=(
        Flaw(belief="any-tape-plays", step="rest"),
        Flaw(belief="replay-repairs", step="set", after="copy"),
        Flaw(belief="mend-later", step="look"),
    ),
    decoys=(
        Decoy(
            step="heater",
            text="Lay it on the warm player for a while",
            why="heat from one side warms it unevenly, and a magnet may be near",
        ),
    ),
    needs={"look": "Until it is played, nobody has seen what is on the tape."},
    otherwise={
        "rest": "Let it lie sealed overnight, then look it over",
        "set": "Set tracking, skew and levels of the player for it",
    },
    rule=SET_UP_FIRST,
)
LOG = StandingProcedure(
    name="log a tape without time code",
    task="{tape} came warm and dry from the camera, and has no time code. Log it for the film.",
    steps={
        "protect": "Set its tab so that nothing can record on it",
        "in": "Put it into the player, and wait until it is threaded",
        "start": "Find the first frame that can be recognised",
        "zero": COUNTER,
        "takes": "Write down the start and the end of each take",
        "first": "Add a run-up to each start: the first good edit in",
    },
    rules=(
        Before(
            "protect",
            "in",
            "In a machine, one wrong switch is enough to record over it.",
            critical=True,
        ),
        Before("in", "start", "It must be threaded before it is looked at."),
        Before("start", "zero", "From there, every other day finds the same figures again."),
        Before("zero", "takes", "Figures mean nothing before it is said where they begin."),
        Before("takes", "first", "A run-up is counted from the start of a take."),
    ),
    flaws=(),
    decoys=(
        Decoy(
            step="first-frame",
            text=FIRST_FRAME,
            why="the player needs a run-up inside the take before the edit in",
            belief="no-source-run-up",
            instead="first",
        ),
        Decoy(
            step="each",
            text="Put the counter at zero again where a take begins",
            why="then two takes have the same figures, and nobody finds either",
            belief="counter-is-time-code",
            after="takes",
        ),
        Decoy(
            step="wind",
            text=WIND_ONCE,
            why="that is for a new tape: this one is looked through anyway",
        ),
    ),
    needs={"first": "Without it, a shot is planned that can’t be edited."},
    otherwise={
        "start": "Look for the first frame that anybody can find again",
        "takes": "List each take, with its start and its end",
    },
    rule=COUNTER_RULE,
)
ARRIVING = (ARRIVE, LOG)
