"""Changes inside a film that is already laid."""

from exercises.drills.can_this_bench.effect import Effect, says
from exercises.drills.rules import MOVES, NO_PULSES, ONE_TRACK, PREPARED

PICKS = "assemble-picks-tracks"
RAGGED = "insert-ends-ragged"
CLEAN = "assemble-ends-clean"
PUSHES = "insert-pushes-along"
HEALS = "gap-heals"
SOUND = "sound-needs-no-pulses"
LAYS = "insert-lays-pulses"

TAKES_BOTH = "An assemble always takes picture, sound and pulses."
MAY_END = "Where pulses run on, an insert may end inside a shot."

CUTAWAY = Effect(
    name="cutaway",
    wish=(
        "While {talk} goes on speaking, {person} wants to see {shot} for four seconds from "
        "{code}; then the speaker again. Pulses run on throughout.",
        "Over part of a talk, from {code}, {shot} is to be seen; {talk} is to be heard all the "
        "time and seen again after it. The pulses there are good.",
    ),
    right="Yes: insert the picture alone, for as long as it is wanted",
    because="An insert records the tracks that are chosen, and may end where pulses run on.",
    replies=(
        says("Yes: assemble the picture and leave the sound out", TAKES_BOTH, PICKS),
        says("No: an insert can’t end inside the talk", MAY_END, RAGGED),
        says(
            "Only by an assemble of the picture: an insert can’t end there",
            f"{TAKES_BOTH} {MAY_END}",
            PICKS,
            RAGGED,
        ),
    ),
    rule=ONE_TRACK,
)
SPOILT = Effect(
    name="spoilt frames inside a shot",
    wish=(
        "At {code}, inside {shot}, eleven frames are spoilt. {person} wants those frames "
        "again and everything after them as it is. Pulses run on throughout.",
        "A flash spoils a few frames of {shot} at {code}. What follows is good, and so are the "
        "pulses under it. Can the few be laid again?",
    ),
    right="Yes: insert those frames again, and stop inside the shot there",
    because="An insert touches nothing outside its edit points.",
    replies=(
        says("No: an insert would have to go on to the end of the shot", MAY_END, RAGGED),
        says(
            "Yes: assemble those frames, which ends where you stop it",
            "An assemble wipes tape past its end, and its pulses don’t join the old ones.",
            CLEAN,
        ),
        says(
            "Only by an assemble, since an insert can’t end inside a shot",
            f"{MAY_END} An assemble wipes tape past its end.",
            CLEAN,
            RAGGED,
        ),
    ),
    rule=PREPARED,
)
EARLY_SOUND = Effect(
    name="sound before its picture",
    wish=(
        "{person} wants to hear {talk} two seconds before the cut to it at {code}, still "
        "seeing {shot}. The edit master has been prepared with black.",
        "At {code} the picture goes from {shot} to {talk}; the voice is to begin earlier. The "
        "whole tape was prepared with black.",
    ),
    right="Yes: insert the sound from earlier on, the picture from the cut",
    because="Picture and sound are tracks of their own; an insert takes either alone.",
    replies=(
        says("Yes: assemble the sound first and then the picture at the cut", TAKES_BOTH, PICKS),
        says(
            "No: picture and sound of one take can only be laid together at one frame",
            "An insert takes either track alone, each from where you like.",
        ),
        says(
            "No: the sound of a take can’t be had before its picture begins on the source tape",
            "It needs only a take that begins early enough.",
        ),
    ),
    rule=ONE_TRACK,
)
MAKE_ROOM = Effect(
    name="room for another shot",
    wish=(
        "{person} forgot {shot}. It belongs at {code}, in the middle of the film, and nothing "
        "that is there may be lost.",
        "Between two shots that meet at {code}, {person} wants {shot}, six seconds of it, and "
        "all the rest as it is.",
    ),
    right="No: give up six seconds of the film, or lay all that follows again",
    because="Nothing on a tape moves; a recording replaces what is there.",
    replies=(
        says(
            "Yes: insert it, and all that follows moves on by six seconds",
            "An insert records over what is there; nothing moves.",
            PUSHES,
        ),
        says(
            "Yes: cut the tape with a blade and splice the new shot in",
            "A splice breaks the tracks and can damage the heads: tape like this isn’t cut.",
        ),
        says(
            "No: what has been laid on a tape can never be changed again",
            "It can be recorded over, as often as need be.",
        ),
    ),
    rule=MOVES,
)
TAKE_OUT = Effect(
    name="a shot taken out",
    wish=(
        "{person} wants {shot} out of the film, at {code}, and the shots on either side to meet.",
        "One shot too many: {shot}, at {code}. It should go, and what follows should come at once.",
    ),
    right="No: fill its place, or lay all that follows again, earlier",
    because="Nothing on a tape moves: a shot that is wiped leaves its length behind.",
    replies=(
        says(
            "Yes: wipe it, and the short hole closes when the tape is played",
            "A hole stays: the tape runs through it, and the picture rolls after it.",
            HEALS,
        ),
        says(
            "Yes: insert the shot after it at its place, and the rest is pulled along",
            "Only what you record changes; the rest stays where it is.",
        ),
        says(
            "No: a shot can never be recorded over once another follows it",
            "An insert records over any shot, if another of its length takes its place.",
        ),
    ),
    rule=MOVES,
)
SOUND_ON = Effect(
    name="sound past the last picture",
    wish=(
        "The film was assembled and ends at {code}; beyond, the tape has never been recorded "
        "on. {person} wants {sound} to go on for eight seconds after the last picture.",
        "After the last shot, assembled as far as {code} on a new tape, {sound} should be heard "
        "over an empty screen.",
    ),
    right="Yes, in two steps: assemble black there, then insert the sound",
    because="There are no pulses beyond the end: an assemble must lay them first.",
    replies=(
        says(
            "Yes: insert the sound alone, for sound needs no pulses",
            "Without pulses nothing plays, sound no more than picture.",
            SOUND,
        ),
        says(
            "Yes: insert the sound, and the insert lays pulses under it",
            "An insert lays no pulses.",
            LAYS,
        ),
        says(
            "Yes: insert it; pulses come with it, and it could do without",
            "An insert lays no pulses, and without pulses nothing plays.",
            SOUND,
            LAYS,
        ),
    ),
    rule=NO_PULSES,
)
CHANGED = (CUTAWAY, SPOILT, EARLY_SOUND, MAKE_ROOM, TAKE_OUT, SOUND_ON)
