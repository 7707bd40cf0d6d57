"""What hangs on the recorder."""

from exercises.drills.judging.rules import (
    CHANNEL_BY_CHANNEL,
    DRUM_ERASES,
    ONE_RECORDER,
    OTHERS_TAPE,
)
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    CUT,
    INSERT_BOTH,
    INSERT_PICTURE,
    LAY_AGAIN,
    LEAVE,
    MASTER,
    ONE_CHANNEL,
    OTHER_RECORDER,
    PLAYER_TRACKING,
    RECORDER_TRACKING,
    SAME_LENGTH,
    SOURCE,
    TRIAL,
    WAIT,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

ALIKE = "No two recorders are quite alike: the joint may show."
BUILT_HERE = "Nothing has been laid yet: it can be begun on any recorder that does it."

MACHINES = (
    Effect(
        name="going on at the other bench",
        wish="As far as {code}, this film comes from {room}. Tonight only the other bench is "
        "free, and {person} wants to lay {shot} there, with no joint to be seen.",
        right=WAIT,
        because="No two are quite alike: another one’s joint may show.",
        wrong={
            ASSEMBLE: ALIKE,
            RECORDER_TRACKING: why.FIXED,
            OTHER_RECORDER: "The film is begun: it is built on the one that it was begun on.",
        },
        held={ASSEMBLE: "recorders-alike"},
        rule=ONE_RECORDER,
    ),
    Effect(
        name="two benches at once",
        wish="To save time, {person} wants the second half of the film laid on the other bench, "
        "and copied behind the first, which ends at {code}. It should be as good as the first.",
        right=WAIT,
        because="Laid there and copied, it would be a generation older, by another machine.",
        wrong={
            MASTER: why.COPY_COSTS,
            CUT: "The joint is not what makes it worse.",
            TRIAL: "However the joint comes out, the half would be a generation older.",
        },
        held={MASTER: "copy-is-free"},
        rule=ONE_RECORDER,
    ),
    Effect(
        name="a busy bench",
        wish="{person} would like to lay the last three shots, from {code}, today. {room}, where "
        "the film was begun, is taken until evening; the bench beside it stands empty.",
        right=WAIT,
        because="A film is built on one recorder: another’s joint may show.",
        wrong={
            INSERT_BOTH: ALIKE,
            PLAYER_TRACKING: "It sets what is played, not what another recorder lays.",
            LAY_AGAIN: "All of it on the other bench: that is a night’s work to save an afternoon.",
        },
        held={INSERT_BOTH: "recorders-alike"},
        rule=ONE_RECORDER,
    ),
    Effect(
        name="a tape from another workshop",
        wish="Another workshop sends its finished film, made on its own machines. In it, {title} "
        "is misspelt at {code}; {person} is asked to put a new one over it.",
        right=TRIAL,
        because="Your recorder’s tracks may not fit theirs: first see what comes of it.",
        wrong={
            INSERT_PICTURE: ALIKE + " This is their only tape.",
            RECORDER_TRACKING: why.FIXED,
            SOURCE: "Their source tapes are with them, and it is one card.",
        },
        held={INSERT_PICTURE: "recorders-alike"},
        rule=OTHERS_TAPE,
    ),
    Effect(
        name="a recorder that has failed",
        wish="Half of the film is laid, as far as {code}. The recorder that laid it has failed, "
        "and will not be mended. {person} wants to go on with another.",
        right=TRIAL,
        because="Don’t just move: your instructor says what is to be done with what is laid.",
        wrong={
            ASSEMBLE: ALIKE,
            WAIT: "It will not be mended.",
            OTHER_RECORDER: "Half of it is laid: what becomes of that is the question.",
        },
        held={ASSEMBLE: "recorders-alike"},
        rule=OTHERS_TAPE,
    ),
    Effect(
        name="an insert without erase heads on the drum",
        wish="The film was assembled here. Now {person} wants to see {shot} for three seconds at "
        "{code}, inside {talk}, and to keep the voice. This recorder’s drum has no erase heads.",
        right=TRIAL,
        because="Another recorder could insert it; whether it joins well, a trial shows.",
        wrong={
            INSERT_PICTURE: why.NO_ERASING,
            ASSEMBLE: why.TAKES_ALL,
            LAY_AGAIN: "Assembled anew, the voice could not run on under another picture either.",
        },
        held={ASSEMBLE: "assemble-picks-tracks"},
        rule=DRUM_ERASES,
    ),
    Effect(
        name="a film of inserts planned",
        wish="On paper, the film has {shot} and much else over running talk. On {room}, the "
        "recorder’s drum has no erase heads. Nothing has been laid yet.",
        right=OTHER_RECORDER,
        because="It wipes no old picture under a new one, so its inserts are not clean.",
        wrong={
            INSERT_PICTURE: why.NO_ERASING,
            WAIT: BUILT_HERE,
            SAME_LENGTH: "With its own sound, a shot would take the talk away.",
        },
        rule=DRUM_ERASES,
    ),
    Effect(
        name="two channels planned",
        wish="On paper, {sound} lies on one sound channel and the harbour on another, to the last "
        "shot. {room} records one channel, the other bench two. Nothing has been laid yet.",
        right=OTHER_RECORDER,
        because="A film is built on one recorder: begin it on one that does all it needs.",
        wrong={
            ONE_CHANNEL: "This recorder has but one.",
            TRIAL: "Nothing has been laid that could be spoilt.",
            WAIT: BUILT_HERE,
        },
        rule=CHANNEL_BY_CHANNEL,
    ),
    Effect(
        name="clean joints planned",
        wish="{person} wants each cut to be clean from its first frame. On a spare tape, {room} "
        "leaves false colour moving over the start of every edit; the other bench does not.",
        right=OTHER_RECORDER,
        because="Its drum has no erase heads: old tracks shine through until they have passed.",
        wrong={
            RECORDER_TRACKING: why.FIXED,
            SOURCE: "The source tapes are good: it comes from the recorder.",
            LEAVE: "It is recorded so, and plays so for ever.",
        },
        held={RECORDER_TRACKING: "tune-the-recorder"},
        rule=DRUM_ERASES,
    ),
)
