"""What lacks pulses: holes in the film, tape beyond its end, the start of a take."""

from exercises.drills.judging.rules import (
    ENDS_OF_TAKES,
    NO_GAP,
    NO_PULSES,
    ONE_TAKE,
    ROOM_FOR_RUN_UP,
)
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BLACK_FIRST,
    INSERT_BOTH,
    INSERT_SOUND,
    LAY_AGAIN,
    LEAVE,
    OTHER_TAKE,
    SAME_LENGTH,
    SOURCE,
    SPLIT,
    TWO_EDITS,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

PULSES = (
    Effect(
        name="a short hole in the film",
        wish="Between two assembled shots, at {code}, a second of tape is without pulses; many "
        "shots follow. {person} wants the film to run on there.",
        right=LAY_AGAIN,
        because="No mode lays pulses there and joins them to those behind.",
        wrong={
            LEAVE: why.HOLE_STAYS,
            ASSEMBLE: why.NO_CLEAN_END,
            SAME_LENGTH: "As long as the hole, it would still lack pulses, or not join them.",
        },
        held={LEAVE: "gap-heals"},
        rule=NO_GAP,
    ),
    Effect(
        name="a long hole in the film",
        wish="From {code} on, for six seconds, the control track is bare; good shots follow. "
        "{person} wants {shot} there, and those shots as they are.",
        right=LAY_AGAIN,
        because="An insert finds no pulses there, and an assemble ends raggedly.",
        wrong={
            INSERT_BOTH: why.LAYS_NONE,
            BLACK_FIRST: "Black by assemble ends as raggedly as any assemble.",
            TWO_EDITS: "Neither of the two would join the pulses behind the hole.",
        },
        held={INSERT_BOTH: "insert-lays-pulses"},
        rule=NO_PULSES,
    ),
    Effect(
        name="sound past the last picture",
        wish="The film was assembled and ends at {code}; beyond, the tape has never been recorded "
        "on. {person} wants to hear {sound} there, over an empty screen.",
        right=BLACK_FIRST,
        because="The tape needs pulses there, and an insert lays none.",
        wrong={
            INSERT_SOUND: "Without pulses no machine locks, and sound wavers as a picture tears.",
            SPLIT: why.LAYS_NONE,
            LAY_AGAIN: "What is laid is good, and stays.",
        },
        held={INSERT_SOUND: "sound-needs-no-pulses"},
        rule=NO_PULSES,
    ),
    Effect(
        name="cards to be placed later",
        wish="The film was assembled and ends at {code}; beyond, the tape has never been recorded "
        "on. There {person} wants to try {card} here and there, by insert, over black.",
        right=BLACK_FIRST,
        because="Once there is black, there are pulses, and inserts may go anywhere on it.",
        wrong={
            INSERT_BOTH: why.LAYS_NONE,
            SPLIT: why.LAYS_NONE,
            LEAVE: "Blank tape is not black, and has no pulses.",
        },
        held={INSERT_BOTH: "insert-lays-pulses"},
        rule=NO_PULSES,
    ),
    Effect(
        name="an edit across two takes",
        wish="On {tape}, one take of {shot} ends and the next begins at the very next frame. "
        "{person} wants the end of the one and most of the other, both steady.",
        right=TWO_EDITS,
        because="Pulses jump between takes; the second is used from a run-up after its start.",
        wrong={
            INSERT_BOTH: "In one go, the copy rolls where the second take begins.",
            ASSEMBLE: "In one go, the copy rolls where the second take begins.",
            SPLIT: "Either track would be unsteady where the takes meet.",
        },
        held={ASSEMBLE: "touching-takes-share-pulses"},
        rule=ONE_TAKE,
        skill="what-the-bench-cant-do",
    ),
    Effect(
        name="a take without run-up",
        wish="{shot}, on {tape}, happens in the very first second of its take. {person} wants it "
        "from its first frame, behind the shot that ends at {code}.",
        right=OTHER_TAKE,
        because="The player needs a run-up inside the take, and here there is none.",
        wrong={
            ASSEMBLE: "The player isn’t locked so soon: the copy begins unsteady.",
            TWO_EDITS: "Nobody can add run-up to a take at the bench.",
            BLACK_FIRST: "Black on the edit master gives the player no run-up.",
        },
        held={ASSEMBLE: "no-source-run-up"},
        rule=ROOM_FOR_RUN_UP,
        skill="what-the-bench-cant-do",
    ),
    Effect(
        name="a take recorded into",
        wish="The camera began a new take inside the last seconds of {shot}, on {tape}. Those "
        "seconds are what {person} wants at {code}.",
        right=OTHER_TAKE,
        because="What the camera has recorded over is gone from that tape.",
        wrong={
            SOURCE: "That tape no longer has it.",
            LEAVE: "It is gone from it: something else plays there now.",
            TWO_EDITS: "Neither finds what is no longer there.",
        },
        rule=ENDS_OF_TAKES,
        skill="what-the-bench-cant-do",
    ),
)
