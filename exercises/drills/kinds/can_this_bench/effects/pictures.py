"""Effects that need two pictures at once."""

from exercises.drills.judging.rules import LEAD_OVER, MADE_ELSEWHERE, ONE_PICTURE
from exercises.drills.kinds.can_this_bench.answers import (
    BY_HAND,
    CUT,
    ELSEWHERE,
    INSERT_BOTH,
    INSERT_PICTURE,
    MASTER,
    MIX,
    ONE_BY_ONE,
    ONE_CHANNEL,
    OTHER_RECORDER,
    OTHER_TAKE,
    RECORDER_TRACKING,
    SAME_LENGTH,
    SOURCE,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

BY_MACHINES = "two-machines-dissolve"

PICTURES = (
    Effect(
        name="dissolve",
        wish="{person} wants {talk} to melt into {shot}, for one second from {code}. Something "
        "that says the same will do.",
        right=CUT,
        because="A dissolve needs two pictures at once; a shot between says it as well.",
        wrong={
            MIX: why.ONE_PICTURE,
            INSERT_PICTURE: "A few frames at a time, it would be one or the other, and flicker.",
            OTHER_RECORDER: why.NOT_THE_RECORDER,
        },
        held={MIX: BY_MACHINES},
        rule=LEAD_OVER,
    ),
    Effect(
        name="one picture pushes the other off",
        wish="From {code} on, {shot} should push {talk} out of the picture from the left. "
        "{person} only wants it to be seen that another day has come.",
        right=CUT,
        because="For a second both would be seen; a shot between says that time has passed.",
        wrong={
            MIX: why.ONE_PICTURE,
            INSERT_BOTH: "An insert replaces the whole picture, from one frame to the next.",
            RECORDER_TRACKING: why.FIXED,
        },
        held={MIX: BY_MACHINES},
        rule=LEAD_OVER,
    ),
    Effect(
        name="a joint that jars",
        wish="At {code}, {talk} meets another answer of the same person, a little larger. The jump "
        "jars, and {person} would like the two to melt together.",
        right=CUT,
        because="Two pictures at once aren’t to be had; something seen between hides the jump.",
        wrong={
            MIX: why.ONE_PICTURE,
            MASTER: "A copy has the same jump, a generation older.",
            ONE_CHANNEL: "The jump is seen, whatever is heard.",
        },
        held={MIX: BY_MACHINES},
        rule=LEAD_OVER,
    ),
    Effect(
        name="title over a picture",
        wish="{person} wants the words of {title} to stand in the picture of {shot}, at {code}, "
        "while it moves. What comes near to it will do.",
        right=ONE_BY_ONE,
        because="Words in a moving picture are two pictures; a card is a shot of its own.",
        wrong={
            MIX: why.ONE_PICTURE,
            INSERT_PICTURE: "The black of the card would replace the picture too.",
            OTHER_TAKE: "No take has words in its picture.",
        },
        held={MIX: BY_MACHINES},
        rule=ONE_PICTURE,
    ),
    Effect(
        name="two callers side by side",
        wish="Two people telephone. {person} wants both to be seen at once from {code}, each in "
        "one half of the picture. What comes near to it will do.",
        right=ONE_BY_ONE,
        because="Each half is a picture of its own; cut to and fro between them.",
        wrong={
            MIX: why.ONE_PICTURE,
            INSERT_PICTURE: "An insert replaces the whole picture, never half of it.",
            ONE_CHANNEL: "That is for what is heard; here two pictures are asked for.",
        },
        held={MIX: BY_MACHINES},
        rule=ONE_PICTURE,
    ),
    Effect(
        name="a small picture in a corner",
        wish="In a corner of {talk}, {shot} is to be seen, small, from {code}. {person} will take "
        "whatever comes near to it.",
        right=ONE_BY_ONE,
        because="Two pictures at once need a picture mixer; two cuts need none.",
        wrong={
            SAME_LENGTH: "Then the talk itself would not be seen at all.",
            ELSEWHERE: "Whatever comes near will do, and that can be made here.",
            OTHER_RECORDER: why.NOT_THE_RECORDER,
        },
        rule=ONE_PICTURE,
    ),
    Effect(
        name="a dissolve that must be",
        wish="At {code} the film needs one real dissolve, from {talk} to {shot}: cuts, and shots "
        "between, have been tried, and do not serve.",
        right=ELSEWHERE,
        because="Two players and a picture mixer make it, straight from the source tapes.",
        wrong={
            MIX: why.ONE_PICTURE,
            CUT: "That has been tried, and does not serve.",
            BY_HAND: why.NO_FADE,
        },
        held={MIX: BY_MACHINES},
        rule=MADE_ELSEWHERE,
    ),
    Effect(
        name="a name that must stand in the picture",
        wish="Whoever paid for the film wants a name to stand in the picture of {shot} for four "
        "seconds, from {code}. A card by itself was refused.",
        right=ELSEWHERE,
        because="It takes a picture mixer; what comes back has one recording more.",
        wrong={
            ONE_BY_ONE: "A card by itself was refused.",
            INSERT_PICTURE: "The name would be seen, and the shot would not.",
            SOURCE: "The camera’s tape has no name in its picture.",
        },
        rule=MADE_ELSEWHERE,
    ),
)
