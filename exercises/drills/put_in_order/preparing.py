"""Preparing an edit master: its leader, or black along all of it."""

from exercises.drills.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.rules import LEADER_FIRST, NO_PULSES

LEADER = Procedure(
    name="lay a leader",
    task="A new tape is to become an edit master. Lay a leader, then the first shot: {shot}, "
    "from {tape}. The film is to begin at {code}.",
    steps={
        "wind": "Wind the tape to its end and back, once",
        "first": "Record black from the start of the tape, longer than a run-up",
        "bars": "Assemble bars and tone",
        "slate": "Assemble a card with the film’s name and the date",
        "black": "Assemble black up to where the film begins",
        "shot": "Assemble the first shot",
        "look": "Play all of it from the start",
    },
    rules=(
        Before("wind", "first", "A tape from the box is wound once before it is recorded on."),
        Before(
            "first",
            "bars",
            "Before any edit there must be pulses for the recorder to lock to.",
            critical=True,
        ),
        Before("bars", "slate", "Bars and tone come first: machines are set on them."),
        Before("slate", "black", "Black comes last, so that the film begins from black."),
        Before(
            "black",
            "shot",
            "Assembled after the shot, the leader would wipe into it.",
            critical=True,
        ),
        Before("shot", "look", "There is nothing to look at before it is laid."),
    ),
    flaws=(
        Flaw(belief="no-master-run-up", step="first"),
        Flaw(belief="assemble-ends-clean", step="black", after="shot"),
        Flaw(belief="gap-heals", step="gap", after="slate"),
    ),
    rule=LEADER_FIRST,
    decoys={
        "gap": (
            "Leave a second of blank tape",
            "blank tape holds no pulses: the picture is lost there and rolls after it",
        ),
    },
)
BLACK = Procedure(
    name="prepare a tape with black",
    task="The next film is to be laid by inserts, over prepared black. Prepare a new tape, and "
    "begin with {shot}, from {tape}, at {code}.",
    steps={
        "wind": "Wind the tape to its end and back, once",
        "black": "Record black along the whole tape, in one go",
        "check": "Play parts of it and see that pulses are there to the end",
        "mode": "Choose insert, picture and sound",
        "back": "Wind both machines back by the pre-roll",
        "shot": "Record the first shot",
        "look": "Play the shot from before the edit in to after the edit out",
    },
    rules=(
        Before("wind", "black", "A tape from the box is wound once before it is recorded on."),
        Before(
            "black",
            "shot",
            "An insert lays no pulses; the black brings them.",
            critical=True,
        ),
        Before("black", "check", "There is nothing to see before it is recorded."),
        Before("check", "shot", "A place without pulses is found before the film lies over it."),
        Before("mode", "shot", "An assemble would wipe the black past its end."),
        Before("back", "shot", "Both machines must be locked where the edit begins."),
        Before("shot", "look", "There is nothing to look at before it is laid."),
    ),
    flaws=(
        Flaw(belief="insert-lays-pulses", step="black"),
        Flaw(belief="insert-ends-ragged", step="cover", after="shot"),
        Flaw(belief="plays-without-pulses", step="check"),
    ),
    rule=NO_PULSES,
    decoys={
        "cover": (
            "Insert black again after the shot, to clean its end",
            "an insert ends cleanly: the black after it is as it was",
        ),
    },
)
