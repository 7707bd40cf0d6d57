"""A sound laid anew, earlier, later, from another take."""

from exercises.drills.judging.rules import (
    EACH_TAKE,
    IN_STEP,
    ONE_TRACK,
    UNDER_THE_CEILING,
)
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BY_HAND,
    FILM_IT,
    INSERT_BOTH,
    INSERT_SOUND,
    LAY_AGAIN,
    LEAVE,
    MASTER,
    MIX,
    ONE_BY_ONE,
    ONE_CHANNEL,
    OTHER_TAKE,
    SOURCE,
    SPLIT,
    TRIAL,
    TWO_EDITS,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

SOUNDS = (
    Effect(
        name="narration over a laid shot",
        wish="{shot} is laid, from {code} on. In the place of its own sound, {person} wants to "
        "hear {sound}. Pulses run on throughout.",
        right=INSERT_SOUND,
        because="The picture stays, to the frame; the new sound takes the place of the old.",
        wrong={
            ASSEMBLE: why.TAKES_ALL,
            INSERT_BOTH: "The picture of the other tape would be laid as well.",
            MIX: "Mixed, its own sound would still be heard.",
            ONE_CHANNEL: "From the other one, its own sound would still be heard.",
            FILM_IT: "The picture is good as it is, and it stays.",
        },
        held={ASSEMBLE: "assemble-picks-tracks"},
        rule=ONE_TRACK,
    ),
    Effect(
        name="a voice laid too loud",
        wish="{talk}, laid at {code}, is harsh and rough; on the source tape every word is clean. "
        "The picture is good. Can it be mended?",
        right=INSERT_SOUND,
        because="At its right level, laid once more from the source tape, it is clean.",
        wrong={
            LEAVE: "What was recorded too loud is distorted for good.",
            OTHER_TAKE: "The take is good: only its copy came out too loud.",
            BY_HAND: "Nobody turns away here: the level is set first, and one setting will do.",
            ONE_CHANNEL: "From the other one, the rough words would still be heard.",
        },
        rule=UNDER_THE_CEILING,
        skill="replacing-inside-it",
    ),
    Effect(
        name="lips and words apart",
        wish="The words of {talk}, laid at {code}, come four frames before the lips. Picture and "
        "pulses are good. Can they be brought together?",
        right=INSERT_SOUND,
        because="Laid again four frames later than before, it meets its picture.",
        wrong={
            LEAVE: "Sound that comes so early is noticed.",
            LAY_AGAIN: "The other track is good, and so is all that follows.",
            MASTER: "A copy would copy the four frames as well.",
            FILM_IT: "The take is good: only its copy is out of step.",
        },
        rule=IN_STEP,
    ),
    Effect(
        name="a sound that leads",
        wish="At {code} the picture goes from {shot} to {talk}. The voice is to begin two seconds "
        "before that. The whole tape was prepared with black.",
        right=SPLIT,
        because="Each is a track of its own, and an insert lays either where you like.",
        wrong={
            ASSEMBLE: why.TAKES_ALL,
            INSERT_BOTH: "Then both would begin at one frame, and nothing would lead.",
            MIX: "The voice is to stand alone: there is nothing to mix.",
        },
        held={ASSEMBLE: "assemble-picks-tracks"},
        rule=ONE_TRACK,
    ),
    Effect(
        name="a sound that runs over",
        wish="{talk} is to be seen as far as {code}, and heard three seconds longer, while "
        "{shot} is seen already. Pulses run on throughout.",
        right=SPLIT,
        because="Its sound may end later than its picture, and both ends are clean.",
        wrong={
            LAY_AGAIN: why.ENDS_INSIDE,
            MIX: "One voice is to be heard, over another picture: nothing is mixed.",
            ONE_BY_ONE: "It can be had as asked: the two tracks need not change together.",
        },
        held={LAY_AGAIN: "insert-ends-ragged"},
        rule=ONE_TRACK,
    ),
    Effect(
        name="a voice that is rough at its source",
        wish="On {tape}, {talk} is harsh and rough wherever it gets loud. {person} wants clean "
        "words from {code}.",
        right=OTHER_TAKE,
        because="What the camera’s recording has distorted, no level brings back.",
        wrong={
            BY_HAND: "Softer, it would be just as rough.",
            SOURCE: why.SAME_FAULT,
            INSERT_SOUND: "It would lay the same rough words.",
        },
        rule=UNDER_THE_CEILING,
        skill="what-a-copy-is",
    ),
    Effect(
        name="two takes at two levels",
        wish="{person} wants to lay two takes of {talk} behind one another, over pictures that "
        "are there. The second was recorded much softer.",
        right=TWO_EDITS,
        because="Set the second by its own loudest words, and lay it by itself.",
        wrong={
            INSERT_SOUND: "In one go, at one level, the second take would be too weak.",
            BY_HAND: "No hand is quick enough between two takes: the step would be heard.",
            TRIAL: "Nothing is at risk: sound is laid over pictures that stay.",
        },
        held={INSERT_SOUND: "one-level-for-all"},
        rule=EACH_TAKE,
        skill="replacing-inside-it",
    ),
)
