"""What a copy costs and keeps."""

from exercises.drills.judging.rules import (
    DUB_OF_THE_MASTER,
    FIXED_POSITION,
    GENERATIONS_ADD,
    LEVEL_IS_LAID,
    SET_UP_FIRST,
)
from exercises.drills.kinds.can_this_bench.answers import (
    CUT,
    ELSEWHERE,
    FILM_IT,
    INSERT_SOUND,
    LAY_AGAIN,
    LEAVE,
    MASTER,
    ONE_BY_ONE,
    OTHER_RECORDER,
    OTHER_TAKE,
    PLAYER_TRACKING,
    RECORDER_TRACKING,
    SOURCE,
    TRIAL,
    TWO_EDITS,
    WAIT,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

COPIES = (
    Effect(
        name="a noise band in the copy",
        wish="In {shot}, at {code} on the edit master, there is a noise band: tracking was off "
        "when it was copied. {person} wants the band gone.",
        right=SOURCE,
        because="The source tape is still good: with tracking set, it copies clean.",
        wrong={
            PLAYER_TRACKING: why.IN_THE_COPY,
            MASTER: "A copy copies the band, and adds noise of its own.",
            CUT: "The band would still be there, before the cut or after it.",
            FILM_IT: "The camera’s tape is good: the band came with the copy.",
        },
        held={PLAYER_TRACKING: "replay-repairs"},
        rule=SET_UP_FIRST,
    ),
    Effect(
        name="leaning masts in the copy",
        wish="The masts in {shot}, at {code} on the edit master, lean at the top: skew was off "
        "when it was copied. They should stand upright.",
        right=SOURCE,
        because="With skew set, the source tape gives upright masts.",
        wrong={
            LEAVE: why.IN_THE_COPY,
            RECORDER_TRACKING: why.FIXED,
            OTHER_TAKE: "The take is good: only its copy leans.",
        },
        held={LEAVE: "replay-repairs"},
        rule=SET_UP_FIRST,
    ),
    Effect(
        name="a picture laid too strong",
        wish="The white of {shot}, laid at {code}, has lost all detail. On the source tape every "
        "fold in it can be seen. {person} wants the folds.",
        right=SOURCE,
        because="The level was too high for the copy alone; set it, and lay the shot again.",
        wrong={
            LEAVE: "What is clipped is gone from the copy, whoever plays it.",
            ELSEWHERE: "No bench finds what the copy has lost.",
            OTHER_TAKE: "The take is good: only its copy is clipped.",
        },
        held={LEAVE: "level-is-seen-later"},
        rule=LEVEL_IS_LAID,
        skill="what-a-copy-is",
    ),
    Effect(
        name="good here and streaked elsewhere",
        wish="{shot}, laid at {code}, plays well on its own recorder. Elsewhere it has streaks, "
        "and the shots around it have none. Can that be put right?",
        right=SOURCE,
        because="The recorder’s tracking was turned while it was laid: lay it as it should be.",
        wrong={
            PLAYER_TRACKING: "Set for this shot, it would be off for those around it.",
            WAIT: "It was laid on that recorder.",
            LEAVE: "Its tracks lie where other machines don’t look for them.",
        },
        held={PLAYER_TRACKING: "replay-repairs"},
        rule=FIXED_POSITION,
    ),
    Effect(
        name="the first shot once more",
        wish="The film begins with {shot}, and is to end with it too, at {code}: the two should "
        "look just alike. The edit master has it already.",
        right=SOURCE,
        because="From there it is of the same generation as at the beginning.",
        wrong={
            MASTER: why.COPY_COSTS,
            TRIAL: "Nothing is at risk: it only has to come from the right tape.",
            OTHER_TAKE: "Another take would look otherwise.",
        },
        held={MASTER: "copy-is-free"},
        rule=GENERATIONS_ADD,
    ),
    Effect(
        name="the halves the other way round",
        wish="The two halves of the film meet at {code}. {person} wants them the other way round "
        "on a new tape, and nothing to be lost by it. All source tapes are there.",
        right=LAY_AGAIN,
        because="Laid anew from the source tapes, every shot is as good as now.",
        wrong={
            MASTER: why.COPY_COSTS,
            TWO_EDITS: "Copied in two pieces, both halves would be a generation older.",
            CUT: "Where they meet is not the question: both would be copies of copies.",
        },
        held={MASTER: "copy-is-free"},
        rule=GENERATIONS_ADD,
    ),
    Effect(
        name="a dub for the hall",
        wish="The film is finished, and ends at {code}. {person} wants a tape to show in the hall, "
        "which may wear out.",
        right=MASTER,
        because="A dub is for showing; the edit master is only played to make dubs.",
        wrong={
            LEAVE: "Then the edit master itself is what wears out.",
            SOURCE: "That would be the whole film made anew.",
            OTHER_RECORDER: "The film is finished, and one edit makes a dub of it.",
        },
        rule=DUB_OF_THE_MASTER,
    ),
    Effect(
        name="a dub for another house",
        wish="A dub of the finished film is in use in the hall. {person} wants one more, as good, "
        "to be kept in another house; the edit master is on the shelf.",
        right=MASTER,
        because="From there it is third generation, like the first dub.",
        wrong={
            ELSEWHERE: "It takes two machines, and they are here.",
            TWO_EDITS: "One long recording makes it, with no joint.",
            SOURCE: "That would be the whole film made anew.",
        },
        rule=DUB_OF_THE_MASTER,
    ),
    Effect(
        name="a shot that is on no other tape",
        wish="{shot} is wanted in a second film. Its source tape has been recorded over since; it "
        "stands, second generation, in the film that is finished.",
        right=MASTER,
        because="It is the earliest that is left. The copy will be third generation.",
        wrong={
            SOURCE: "It is on that tape no longer.",
            PLAYER_TRACKING: "It finds what is on a tape, not what has been recorded over.",
            WAIT: "Nothing is added to the first film: it is only played.",
        },
        rule=GENERATIONS_ADD,
    ),
    Effect(
        name="a sound that only the film has",
        wish="Of {talk}, the source tape is lost, and a dub for the hall is at hand; the film "
        "itself is on the shelf. Its voice is wanted in another film, as clean as can be.",
        right=MASTER,
        because="It is one copy nearer to the camera than the dub.",
        wrong={
            ELSEWHERE: "No bench makes a sound cleaner than it is on its tape.",
            ONE_BY_ONE: "It can be had as asked: one copy makes it.",
            INSERT_SOUND: "Which tape it comes from is the question, and from the dub it is worse.",
        },
        rule=GENERATIONS_ADD,
    ),
)
