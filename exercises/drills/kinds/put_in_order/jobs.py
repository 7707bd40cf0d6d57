"""The edits that procedures are about."""

from exercises.drills.judging.rules import (
    AT_ONCE,
    CHANNEL_BY_CHANNEL,
    CONTINUE,
    NO_GAP,
    ONE_TRACK,
    PREPARED,
)
from exercises.drills.kinds.put_in_order.job import OrderedJob
from exercises.drills.kinds.put_in_order.procedure import Before
from exercises.drills.kinds.put_in_order.six_steps import (
    ANOTHER_TAPE,
    ANYWHERE,
    BLACK_THERE,
    COUNT,
    FADE,
    LATE,
    LATER,
    SPARE_WORD,
    TUNE,
    WIPE,
    mark,
    mode,
    six,
)
from exercises.drills.kinds.put_in_order.steps import (
    MARK_AFTER,
    MARK_BEFORE,
    MARK_END,
    MARK_IN_AND_OUT,
    MARK_SHOT,
    RECORD_ON,
    RECORD_TO,
    SET_ASSEMBLE,
    SET_BOTH,
    SET_CHANNEL,
    SET_PICTURE,
    SET_SOUND,
)

NO_PULSES_THERE = mode(
    SET_BOTH,
    "where there are no pulses, nothing locks to what an insert lays",
    "insert-lays-pulses",
)
BREAKS = mode(SET_ASSEMBLE, "an assemble would break the pulses of the black", "black-is-blank")
TAKES_SOUND = mode(
    SET_ASSEMBLE, "an assemble always takes picture, sound and pulses", "assemble-picks-tracks"
)
NO_CLEAN_END = mode(
    SET_ASSEMBLE, "an assemble can’t end cleanly before what must stay", "assemble-ends-clean"
)
HOLE = mark(MARK_AFTER, "a hole stays a hole, and the picture rolls after it", "gap-heals")
TAIL_GONE = mark(MARK_BEFORE, "the last two seconds of the film would be gone")
AT_THE_END = mark(MARK_END, "it belongs inside the film, not behind it")
BEFORE_GONE = mark(MARK_BEFORE, "what comes before it would lose two seconds")
ENDS_THERE = mark(
    MARK_SHOT, "where pulses run on, an insert may end inside a shot", "insert-ends-ragged"
)

ASSEMBLED = frozenset({"assemble", "picture", "sound"})
INSERTED = frozenset({"insert", "picture", "sound"})
OF_PICTURE = frozenset({"insert", "picture"})
OF_SOUND = frozenset({"insert", "sound"})
AGAIN = frozenset({"assemble", "again"})
IN_STEP = frozenset({"in-step"})  # what comes when is settled: only all of it can move
OVER_BLACK = frozenset({"insert", "picture", "sound", "prepared"})

JOBS = (
    OrderedJob(
        name="the next shot",
        task="The film was assembled as far as {code}; behind it the tape is blank. Put {shot} "
        "there, from {tape}.",
        steps=six(MARK_END, SET_ASSEMBLE, RECORD_ON),
        marks=(HOLE,),
        modes=(NO_PULSES_THERE,),
        others=(
            TUNE,
            FADE,
            LATE,
            WIPE,
            *ANYWHERE,
        ),
        rule=CONTINUE,
        tags=ASSEMBLED,
    ),
    OrderedJob(
        name="a new ending",
        task="From {code} on, the film is to have another last shot: {shot}, from {tape}. The old "
        "one is not needed.",
        steps=six(
            "Mark where the old ending begins, and the edit in on {tape}", SET_ASSEMBLE, RECORD_ON
        ),
        marks=(mark(MARK_END, "the old ending would come before the new one"),),
        modes=(
            mode(SET_PICTURE, "the old ending would still be heard"),
            mode(SET_SOUND, "the old ending would still be seen"),
        ),
        others=(
            COUNT,
            FADE,
            LATE,
            WIPE,
            *ANYWHERE,
        ),
        rule=CONTINUE,
        tags=ASSEMBLED,
    ),
    OrderedJob(
        name="a rolling joint",
        task="{shot}, from {tape}, was assembled at {code}, and rolls at its first frames. It is "
        "the last shot so far. Mend it.",
        first={"cause": "Ask which machine had too little run-up, and why"},
        rules=(Before("cause", "record", "Made the same way, it will roll again."),),
        steps=six(
            "Mark where the shot before it ends, and its edit in on {tape}", SET_ASSEMBLE, RECORD_ON
        ),
        marks=(mark(MARK_END, "the bad shot would stay, and another one come behind it"),),
        modes=(mode(SET_BOTH, "the joint is bad in its pulses, and an insert leaves those alone"),),
        others=(
            ANOTHER_TAPE,
            LATE,
            *ANYWHERE,
        ),
        rule=AT_ONCE,
        tags=AGAIN,
    ),
    OrderedJob(
        name="a picture over a voice",
        task="Pulses run on through the film. For five seconds from {code}, over a talk, {shot} "
        "is to be seen, from {tape}; the voice stays.",
        steps=six(MARK_IN_AND_OUT, SET_PICTURE, RECORD_TO),
        marks=(ENDS_THERE,),
        modes=(
            TAKES_SOUND,
            mode(SET_BOTH, "the voice would be recorded over"),
        ),
        others=(
            LATER,
            *ANYWHERE,
        ),
        rule=ONE_TRACK,
        tags=OF_PICTURE,
    ),
    OrderedJob(
        name="a voice over a picture",
        task="{shot} is laid at {code}, and pulses run on. Instead of all its sound, {sound} is to "
        "be heard, from {tape}.",
        steps=six(MARK_SHOT, SET_SOUND, RECORD_TO),
        marks=(
            BEFORE_GONE,
            AT_THE_END,
        ),
        modes=(
            TAKES_SOUND,
            mode(SET_BOTH, "the picture would be recorded over"),
        ),
        others=(
            SPARE_WORD,
            LATER,
            WIPE,
            *ANYWHERE,
        ),
        rule=ONE_TRACK,
        tags=OF_SOUND,
    ),
    OrderedJob(
        name="a sound that leads",
        task="At {code}, pulses running on, the picture cuts to {shot}. Its sound, from {tape}, is "
        "to begin two seconds before that.",
        steps=six(MARK_BEFORE, SET_SOUND, RECORD_TO),
        marks=(
            mark(MARK_AFTER, "then it would follow the picture, and not lead"),
            AT_THE_END,
        ),
        modes=(
            TAKES_SOUND,
            mode(SET_BOTH, "the shot would be seen too soon as well"),
        ),
        others=(
            SPARE_WORD,
            LATER,
            *ANYWHERE,
        ),
        rule=ONE_TRACK,
        tags=OF_SOUND | IN_STEP,
    ),
    OrderedJob(
        name="a better take",
        task="In the middle of the film, at {code}, pulses running on, {shot} is to be seen and "
        "heard in another take, from {tape}, just as long.",
        steps=six(MARK_SHOT, SET_BOTH, RECORD_TO),
        marks=(AT_THE_END,),
        modes=(
            NO_CLEAN_END,
            mode(SET_PICTURE, "the sound of the old take would stay"),
        ),
        others=(
            SPARE_WORD,
            LATER,
            *ANYWHERE,
        ),
        rule=PREPARED,
        tags=INSERTED,
    ),
    OrderedJob(
        name="spoilt frames",
        task="Inside {shot}, at {code}, a few frames are spoilt, to see and to hear. Lay them "
        "again from {tape}, and keep what follows. Pulses run on.",
        steps=six(MARK_IN_AND_OUT, SET_BOTH, RECORD_TO),
        marks=(ENDS_THERE,),
        modes=(
            NO_CLEAN_END,
            mode(SET_SOUND, "the picture would stay spoilt"),
        ),
        others=(
            COUNT,
            ANOTHER_TAPE,
            LATER,
            *ANYWHERE,
        ),
        rule=PREPARED,
        tags=INSERTED | IN_STEP,
    ),
    OrderedJob(
        name="over prepared black",
        task="The tape was recorded with black from end to end, and the film is laid on it as far "
        "as {code}. Put {shot} there, from {tape}.",
        steps=six(MARK_END, SET_BOTH, RECORD_TO),
        marks=(
            mark(MARK_AFTER, "two seconds of black would stay between them"),
            TAIL_GONE,
        ),
        modes=(
            BREAKS,
            mode(SET_SOUND, "the shot would be heard, and black be seen"),
        ),
        others=(
            BLACK_THERE,
            *ANYWHERE,
        ),
        rule=PREPARED,
        tags=OVER_BLACK,
    ),
    OrderedJob(
        name="after a pause of black",
        task="The tape was recorded with black from end to end. The scene that ends at {code} is "
        "to be followed by two seconds of black, then by {shot}, from {tape}.",
        steps=six(MARK_AFTER, SET_BOTH, RECORD_TO),
        marks=(mark(MARK_END, "there would be no black between them"),),
        modes=(
            BREAKS,
            mode(SET_PICTURE, "the shot would be seen, and not heard"),
        ),
        others=(
            BLACK_THERE,
            *ANYWHERE,
        ),
        rule=PREPARED,
        tags=OVER_BLACK,
    ),
    OrderedJob(
        name="a second sound",
        task="{shot} is laid at {code} with its sound on channel 1, and pulses run on. For eight "
        "seconds, {sound} is to be heard beside it, from {tape}.",
        steps=six(MARK_IN_AND_OUT, SET_CHANNEL, RECORD_TO),
        marks=(ENDS_THERE,),
        modes=(
            TAKES_SOUND,
            mode(SET_SOUND, "on both channels, it takes the place of the first"),
        ),
        others=(
            SPARE_WORD,
            LATER,
            *ANYWHERE,
        ),
        rule=CHANNEL_BY_CHANNEL,
        tags=OF_SOUND,
    ),
    OrderedJob(
        name="black at the end",
        task="The last shot was assembled as far as {code}; behind it the tape is blank. Lay ten "
        "seconds of black there, from {tape}.",
        steps=six(MARK_END, SET_ASSEMBLE, RECORD_ON),
        marks=(HOLE,),
        modes=(
            NO_PULSES_THERE,
            mode(
                SET_PICTURE,
                "where there are no pulses, nothing locks to what an insert lays",
                "insert-lays-pulses",
            ),
        ),
        others=(
            LATE,
            *ANYWHERE,
        ),
        rule=NO_GAP,
        tags=frozenset({"assemble"}) | IN_STEP,
    ),
)
