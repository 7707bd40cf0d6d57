"""Fades, and what says as much as one."""

from exercises.drills.judging.rules import FADE_IN_FRONT, LEAD_OVER, ONE_PICTURE
from exercises.drills.kinds.can_this_bench.answers import (
    BY_HAND,
    ELSEWHERE,
    FILM_IT,
    INSERT_SOUND,
    LEAVE,
    MASTER,
    MIX,
    OTHER_RECORDER,
    PLAYER_TRACKING,
    RECORDER_TRACKING,
    SPLIT,
    TRIAL,
    TWO_EDITS,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

BY_LEVEL = "level-fades"

FADES = (
    Effect(
        name="fade to black",
        wish="The film is to end with {shot}, which should go slowly down to black, over two "
        "seconds from {code}. It is still to be shot.",
        right=FILM_IT,
        because="A fade must be on the source tape; a cut to black can always be made.",
        wrong={
            BY_HAND: why.NO_FADE,
            OTHER_RECORDER: "No recorder fades a picture; nor does this one.",
            SPLIT: "Neither track gets darker by that.",
        },
        held={BY_HAND: BY_LEVEL},
        rule=FADE_IN_FRONT,
    ),
    Effect(
        name="fade from black",
        wish="The film is to begin in the dark: {shot} should come up slowly out of black. It is "
        "still to be shot.",
        right=FILM_IT,
        because="A fade must be on the source tape; an edit copies it like all the rest.",
        wrong={
            BY_HAND: why.NO_FADE,
            TWO_EDITS: "Black and then the shot: that is a cut.",
            RECORDER_TRACKING: why.FIXED,
        },
        held={BY_HAND: BY_LEVEL},
        rule=FADE_IN_FRONT,
    ),
    Effect(
        name="a lamp that goes out",
        wish="{person} wants {talk} to sink into the dark by and by, as if a lamp went out. The "
        "interview can be held again.",
        right=FILM_IT,
        because="Dim a lamp before the camera: then it is part of the shot, and is copied.",
        wrong={
            MIX: why.ONE_PICTURE,
            BY_HAND: why.NO_FADE,
            PLAYER_TRACKING: "It brings noise into the picture, not darkness.",
        },
        held={BY_HAND: BY_LEVEL},
        rule=FADE_IN_FRONT,
    ),
    Effect(
        name="a title through smoke",
        wish="{card} should come up out of smoke, at {code}, while {shot} is heard. It need not "
        "be the shot’s own picture. Nothing has been filmed yet.",
        right=FILM_IT,
        because="Smoke before the card is one picture; its sound is laid by itself.",
        wrong={
            LEAVE: "There is nothing there yet.",
            MASTER: "There is nothing of it on the edit master yet.",
            TRIAL: "Nothing is at risk: it only has to be filmed.",
        },
        rule=ONE_PICTURE,
    ),
    Effect(
        name="a scene that sounds like night",
        wish="{person} would like the film to melt from day to night at {code}. No dissolve is "
        "needed, if only it is felt before it is seen.",
        right=SPLIT,
        because="The next sound, begun before its picture, leads over without a dissolve.",
        wrong={
            BY_HAND: why.NO_FADE,
            INSERT_SOUND: "Laid over the whole, it would take the voice of the day away.",
            ELSEWHERE: "It can be made here: no two pictures are seen at once.",
        },
        held={BY_HAND: BY_LEVEL},
        rule=LEAD_OVER,
    ),
)
