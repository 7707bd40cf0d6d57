"""Going on where the film ends, and black."""

from exercises.drills.judging.rules import (
    AFTERWARDS,
    BLACK_COUNTS,
    CONTINUE,
    MARK_EARLY,
    NO_GAP,
)
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BLACK_FIRST,
    BY_HAND,
    CUT,
    FILM_IT,
    INSERT_BOTH,
    INSERT_PICTURE,
    LAY_AGAIN,
    LEAVE,
    SAME_LENGTH,
    SOURCE,
    TWO_EDITS,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

ENDS = (
    Effect(
        name="the next shot",
        wish="The film was assembled as far as {code}; beyond, the tape has never been recorded "
        "on. {person} wants {shot} to come next.",
        right=ASSEMBLE,
        because="There the pulses end, and it lays new ones that run on from them.",
        wrong={
            INSERT_BOTH: why.LAYS_NONE,
            SAME_LENGTH: "Nothing is there yet whose place it could take.",
            LAY_AGAIN: "Nothing that is laid has to change.",
        },
        held={INSERT_BOTH: "insert-lays-pulses"},
        rule=CONTINUE,
    ),
    Effect(
        name="a new ending",
        wish="{person} has an idea for another ending, from {code} on: {shot}, and then nothing "
        "more. What lies behind that place is not needed any longer.",
        right=ASSEMBLE,
        because="Pulses lead up to it, and nothing behind it must stay.",
        wrong={
            SAME_LENGTH: "The old ending may be of any length: nothing behind it must stay.",
            LEAVE: "Then the old ending stays.",
            INSERT_PICTURE: "The sound of the old ending would stay.",
        },
        rule=CONTINUE,
    ),
    Effect(
        name="a mark two frames late",
        wish="{shot}, the last shot so far, was assembled at {code}, two frames after the end of "
        "the one before it. There is a hole, and the picture rolls. Can it be mended?",
        right=ASSEMBLE,
        because="Laid once more, at the frame where the shot before it ends, it joins cleanly.",
        wrong={
            LEAVE: why.HOLE_STAYS,
            FILM_IT: "The shot is good: only its place is not.",
            TWO_EDITS: "One will do, if it begins at the right frame.",
        },
        held={LEAVE: "gap-heals"},
        rule=NO_GAP,
    ),
    Effect(
        name="black between two scenes",
        wish="The film was assembled, and ends at {code}; beyond, the tape has never been recorded "
        "on. {person} wants two seconds of black, then the next scene.",
        right=ASSEMBLE,
        because="Black is a shot like any other: it is copied, and brings pulses.",
        wrong={
            LEAVE: "Blank tape is not black: it has no pulses, and shows snow.",
            BY_HAND: why.NO_FADE,
            INSERT_PICTURE: why.LAYS_NONE,
            FILM_IT: "Black is copied from any tape that has it.",
        },
        held={LEAVE: "black-is-blank"},
        rule=BLACK_COUNTS,
    ),
    Effect(
        name="black on a prepared tape",
        wish="The tape was recorded with black from end to end, and the film is laid on it as far "
        "as {code}. {person} wants two seconds of black there, and {shot} after them.",
        right=LEAVE,
        because="There is black already, with pulses: the shot begins two seconds later.",
        wrong={
            ASSEMBLE: "There is black already, and an assemble would break its pulses.",
            BY_HAND: why.NO_FADE,
            SOURCE: "Black is there already: nothing has to be copied for it.",
        },
        held={ASSEMBLE: "black-is-blank"},
        rule=BLACK_COUNTS,
    ),
    Effect(
        name="blank tape behind the last shot",
        wish="{person} sees snow where the film ends, at {code}, right behind the last shot that "
        "was assembled, and asks what to do before {shot} comes.",
        right=LEAVE,
        because="That is how an assemble ends: the next one begins there.",
        wrong={
            LAY_AGAIN: "What is laid is good: behind the last shot there is no film yet.",
            BLACK_FIRST: "The next assemble brings pulses of its own.",
            INSERT_BOTH: why.LAYS_NONE,
        },
        rule=AFTERWARDS,
    ),
    Effect(
        name="a mark two frames early",
        wish="{shot} was assembled at {code}, two frames before the last shot’s end. The joint "
        "plays well, and nothing is missed. {person} asks whether it is safe so.",
        right=LEAVE,
        because="Two frames are gone, and the pulses run on: that is what counts.",
        wrong={
            LAY_AGAIN: "Nothing is wrong with the joint.",
            BLACK_FIRST: "The joint is good as it is; black would break it.",
            CUT: "The joint is good, and needs nothing between.",
        },
        held={LAY_AGAIN: "late-is-safer"},
        rule=MARK_EARLY,
    ),
)
