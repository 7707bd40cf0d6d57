"""Taking in a tape that comes from outside."""

from exercises.drills.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.rules import SET_UP_FIRST

ARRIVE = Procedure(
    name="take in a tape",
    task="On a frosty day {tape} comes by post, with {shot} on it. Take it in, and make the copy.",
    steps={
        "rest": "Leave it sealed in its case until tomorrow, then look it over: shell, window, "
        "tape",
        "protect": "Make sure that no machine can record on it",
        "in": "Put it into the player, and wait until it is threaded",
        "set": "Set the player up for it: tracking, skew, levels",
        "copy": "Record the copy",
        "look": "Play the copy from before its edit in to behind its edit out",
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
    rule=SET_UP_FIRST,
    decoys={
        "heater": (
            "Lay it on the warm player for a while",
            "heat from one side warms it unevenly, and draws dew as well",
        ),
        "first": (
            "Play it through in the recorder first",
            "the recorder is for the edit master, and one wrong switch there wipes the tape",
        ),
    },
)
