"""Shots made longer, shorter, put in and taken out."""

from exercises.drills.judging.rules import MOVES, PREPARED
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BLACK_FIRST,
    CUT,
    INSERT_BOTH,
    LAY_AGAIN,
    LEAVE,
    ONE_BY_ONE,
    SAME_LENGTH,
    SPLIT,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

ROOM = (
    Effect(
        name="a shot made longer",
        wish="In the middle of the film, at {code}, {shot} is to stay on two seconds longer. No "
        "frame of what comes after it may be lost.",
        right=LAY_AGAIN,
        because="All that follows has to begin two seconds later, and so it is laid anew.",
        wrong={
            INSERT_BOTH: why.MOVES_NOTHING,
            SPLIT: "Either track would still be recorded over what comes after it.",
            BLACK_FIRST: "Black would cover the next two seconds, and make no room.",
        },
        held={INSERT_BOTH: "insert-pushes-along"},
        rule=MOVES,
    ),
    Effect(
        name="room for a forgotten shot",
        wish="{person} forgot {shot}. It belongs at {code}, between two shots that meet there, and "
        "nothing that is laid may be lost.",
        right=LAY_AGAIN,
        because="There is no room between two shots that meet: the second must begin later.",
        wrong={
            INSERT_BOTH: why.MOVES_NOTHING,
            SAME_LENGTH: "Then a shot that is laid would be lost, whichever it is.",
            CUT: "A cut to it takes tape, and there is none between them.",
        },
        held={INSERT_BOTH: "insert-pushes-along"},
        rule=MOVES,
    ),
    Effect(
        name="a shot taken out",
        wish="{person} wants {shot} out of the film, at {code}, and the shots on either side of it "
        "to meet. The film may become shorter.",
        right=LAY_AGAIN,
        because="What follows has to begin earlier, and no tape moves: it is laid anew.",
        wrong={
            SAME_LENGTH: "Its neighbours would not meet: another shot would stand between them.",
            BLACK_FIRST: "Its place would be black, or another shot; it would not close.",
            ONE_BY_ONE: "The one is to go: nothing is to be shown after it but its neighbour.",
        },
        rule=MOVES,
    ),
    Effect(
        name="a shot gone and the length kept",
        wish="{shot}, at {code}, has to go. What follows must keep its place to the frame, for its "
        "sound is timed. Pulses run on throughout.",
        right=SAME_LENGTH,
        because="An insert covers a shot, if what takes its place is as long.",
        wrong={
            LAY_AGAIN: why.WHOLE_SHOT,
            ASSEMBLE: why.NO_CLEAN_END,
            CUT: "That covers the shot no more than it is now: its length is left to fill.",
        },
        held={ASSEMBLE: "assemble-ends-clean"},
        rule=PREPARED,
    ),
    Effect(
        name="a new shot that is too short",
        wish="{person} has inserted {shot} at {code} over a longer one, whose last second is still "
        "seen. What follows is to stay.",
        right=SAME_LENGTH,
        because="What is inserted must be as long as its place: nothing closes up.",
        wrong={
            LEAVE: "A second of the old shot would stay between them.",
            LAY_AGAIN: why.WHOLE_SHOT,
            ASSEMBLE: why.NO_CLEAN_END,
        },
        rule=MOVES,
    ),
)
