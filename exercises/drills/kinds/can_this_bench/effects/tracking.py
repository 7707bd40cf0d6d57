"""What hangs on tracking, and on who looks."""

from exercises.drills.judging.rules import (
    BY_THE_WAVEFORM,
    FIXED_POSITION,
    SET_UP_FIRST,
    TRACKING_PEAK,
)
from exercises.drills.kinds.can_this_bench.answers import (
    FILM_IT,
    INSERT_PICTURE,
    LEAVE,
    MASTER,
    OTHER_RECORDER,
    OTHER_TAKE,
    PLAYER_TRACKING,
    RECORDER_TRACKING,
    SOURCE,
    TRIAL,
    WAIT,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

TRACKING = (
    Effect(
        name="streaks while it is played",
        wish="The edit master plays well on its recorder. In the player, for a dub, a noise band "
        "lies over all of it. {person} wants the dub to be clean.",
        right=PLAYER_TRACKING,
        because="The tape is good: this machine only has to find its tracks.",
        wrong={
            SOURCE: why.GOOD_TAPE,
            RECORDER_TRACKING: why.FIXED,
            WAIT: "A tape is played on any machine that is set up for it.",
        },
        held={RECORDER_TRACKING: "tune-the-recorder"},
        rule=TRACKING_PEAK,
    ),
    Effect(
        name="streaks in a rehearsal",
        wish="{tape} comes from another camera than the last one. In the rehearsal, {shot} has a "
        "noise band; nothing has been recorded yet.",
        right=PLAYER_TRACKING,
        because="It was set for the last tape: each tape, and each take, wants its own setting.",
        wrong={
            LEAVE: "Copied like that, the band would stay on the edit master.",
            OTHER_TAKE: "Nothing yet says that the take is bad.",
            RECORDER_TRACKING: why.FIXED,
            FILM_IT: "The shot is good: the machine is not yet set for its tape.",
        },
        held={RECORDER_TRACKING: "tune-the-recorder"},
        rule=SET_UP_FIRST,
    ),
    Effect(
        name="fine noise in a take",
        wish="While {shot} is rehearsed, fine noise begins half-way, though tracking was set at "
        "the start of {tape}. {person} wants it gone before it is recorded.",
        right=PLAYER_TRACKING,
        because="Setting and tape drift apart along a reel: bring it back for this take.",
        wrong={
            LEAVE: "What is copied with noise keeps it.",
            FILM_IT: "The shot is good: the machine is no longer set for it.",
            OTHER_RECORDER: "It comes from the player.",
        },
        held={LEAVE: "set-once"},
        rule=TRACKING_PEAK,
    ),
    Effect(
        name="an old tape looked at on the recorder",
        wish="The player is away. Before noon {person} wants to look through {tape}, which another "
        "camera made, on the recorder: a noise band hides half of it. Nothing is recorded.",
        right=RECORDER_TRACKING,
        because="While it plays, it may be set for a tape; then back to its fixed position.",
        wrong={
            SOURCE: "Another copy is not needed to look at this one.",
            PLAYER_TRACKING: "The player is away: this tape is in the recorder.",
            OTHER_TAKE: "Nothing yet says that the take is bad.",
            FILM_IT: "Nothing yet says that the tape is bad.",
        },
        rule=FIXED_POSITION,
    ),
    Effect(
        name="a guest’s film played on the recorder",
        wish="A guest’s film, laid on machines of their own, is to be watched. Only the recorder "
        "of {room} is free; it shows streaks. The tape can’t be recorded on.",
        right=RECORDER_TRACKING,
        because="It only plays now. Afterwards its tracking goes back to its fixed position.",
        wrong={
            WAIT: "That is for going on with it; to watch it, another machine will do.",
            TRIAL: "Nothing is recorded on it.",
            MASTER: "A copy would copy the streaks.",
        },
        rule=FIXED_POSITION,
    ),
    Effect(
        name="a monitor that looks dark",
        wish="On the monitor {shot} looks too dark, at {code}; by the waveform monitor its white "
        "stands at its mark. {person} would like it brighter.",
        right=LEAVE,
        because="A monitor has controls of its own; what is on the tape is right.",
        wrong={
            SOURCE: why.GOOD_TAPE,
            INSERT_PICTURE: why.GOOD_TAPE,
            FILM_IT: "It was filmed well, and copied well.",
        },
        held={SOURCE: "monitor-is-a-meter"},
        rule=BY_THE_WAVEFORM,
        skill="recorder-set-up",
    ),
)
