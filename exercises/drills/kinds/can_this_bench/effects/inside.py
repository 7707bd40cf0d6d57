"""Changes inside a film, where pulses run on."""

from exercises.drills.judging.rules import NO_FLASH, ONE_TRACK, PREPARED
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BLACK_FIRST,
    CUT,
    INSERT_BOTH,
    INSERT_PICTURE,
    INSERT_SOUND,
    LAY_AGAIN,
    LEAVE,
    ONE_BY_ONE,
    SAME_LENGTH,
    WAIT,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

INSIDE = (
    Effect(
        name="cutaway",
        wish="While {talk} goes on speaking, {person} wants to see {shot} for four seconds from "
        "{code}; then the speaker again. Pulses run on throughout.",
        right=INSERT_PICTURE,
        because="The voice stays, to the frame, and so does all around the four seconds.",
        wrong={
            ASSEMBLE: why.TAKES_ALL,
            INSERT_BOTH: "The voice would be gone for four seconds, with the picture.",
            LAY_AGAIN: why.ENDS_INSIDE,
            ONE_BY_ONE: "It can be had as asked: the voice runs on under another picture.",
        },
        held={ASSEMBLE: "assemble-picks-tracks"},
        rule=ONE_TRACK,
    ),
    Effect(
        name="spoilt picture under a good voice",
        wish="At {code} a flash spoils a few frames of {talk}. Each word is good, and so are the "
        "pulses. {person} wants something else to be seen there, and no word lost.",
        right=INSERT_PICTURE,
        because="Only the picture is spoilt, so only the picture is recorded over.",
        wrong={
            LAY_AGAIN: why.ENDS_INSIDE,
            SAME_LENGTH: "With its sound, another shot would take the words away.",
            ASSEMBLE: why.TAKES_ALL,
        },
        held={LAY_AGAIN: "insert-ends-ragged"},
        rule=ONE_TRACK,
    ),
    Effect(
        name="spoilt frames inside a shot",
        wish="At {code}, inside {shot}, eleven frames are spoilt, to see and to hear. {person} "
        "wants them again, and all that follows as it is. Pulses run on throughout.",
        right=INSERT_BOTH,
        because="An insert touches nothing outside its edit points.",
        wrong={
            LAY_AGAIN: why.ENDS_INSIDE,
            ASSEMBLE: why.NO_CLEAN_END,
            INSERT_PICTURE: "The eleven frames of sound would be as spoilt as before.",
        },
        held={LAY_AGAIN: "insert-ends-ragged"},
        rule=PREPARED,
    ),
    Effect(
        name="another take in the same place",
        wish="In the middle of the film, at {code}, {person} wants {shot} from a better take, "
        "with its own sound. It lasts as long as the one that is there; pulses run on.",
        right=INSERT_BOTH,
        because="It fits its place to the frame, and both its ends are clean.",
        wrong={
            ASSEMBLE: why.NO_CLEAN_END,
            INSERT_SOUND: "The picture would still be that of the worse take.",
            LAY_AGAIN: why.WHOLE_SHOT,
        },
        held={ASSEMBLE: "assemble-ends-clean"},
        rule=PREPARED,
    ),
    Effect(
        name="the next shot on a prepared tape",
        wish="The tape was recorded with black from end to end, and the film is laid on it as far "
        "as {code}. {person} wants {shot} to come next, to see and to hear.",
        right=INSERT_BOTH,
        because="Black has pulses all along, and over them anything can be laid.",
        wrong={
            ASSEMBLE: "It would break the pulses that the black has all along.",
            BLACK_FIRST: "There is black already, and pulses with it.",
            LAY_AGAIN: "Nothing that is laid has to change.",
        },
        held={ASSEMBLE: "black-is-blank"},
        rule=PREPARED,
    ),
    Effect(
        name="a misspelt card",
        wish="In the film, laid on this recorder, {title} is misspelt at {code}. A new one has "
        "been filmed, and is to stand there as long, with its own sound. Pulses run on throughout.",
        right=INSERT_BOTH,
        because="As long as the old one, by the same recorder, it joins cleanly at both ends.",
        wrong={
            LAY_AGAIN: why.ENDS_INSIDE,
            WAIT: "It is this one.",
            ONE_BY_ONE: "The old one is not to be seen at all.",
        },
        held={LAY_AGAIN: "insert-ends-ragged"},
        rule=PREPARED,
    ),
    Effect(
        name="two frames of black at a cut",
        wish="At {code}, where {shot} ends, two frames of black flash up before the next shot. "
        "Each sound is whole, and pulses run on throughout.",
        right=INSERT_PICTURE,
        because="Two frames more of the shot cover the black; the sound has no need of it.",
        wrong={
            LEAVE: "Two frames of black are seen as a flash.",
            LAY_AGAIN: why.ENDS_INSIDE,
            CUT: "A shot laid between them would take more than the two frames.",
        },
        held={LAY_AGAIN: "insert-ends-ragged"},
        rule=NO_FLASH,
        skill="replacing-inside-it",
    ),
)
