"""Effects that need two pictures, or two sounds, at once."""

from exercises.drills.can_this_bench.effect import Effect, says
from exercises.drills.rules import CUT, ONE_TRACK

FADES = "level-fades"
MIXES = "two-machines-dissolve"

NO_FADE = "Turned down, the level leaves a faulty picture on the tape, not a fade."
ONE_PLAYER = "One player gives one picture; the recorder records it and mixes nothing."
NEITHER = "The level makes no fade, and the recorder mixes nothing."

FADE_OUT = Effect(
    name="fade to black",
    wish=(
        "The film ends with {shot}. {person} wants the picture to go slowly down to black, over "
        "two seconds from {code}.",
        "{person} asks for a soft ending: {shot}, darker and darker until the screen is black at "
        "{code}.",
    ),
    right="No: cut to black, or darken the shot in front of the camera",
    because="A cut is all that this bench can make; a fade must already be on the source tape.",
    replies=(
        says("Yes: turn the picture level down while it is being recorded", NO_FADE, FADES),
        says("Yes: mix the shot with black that is on the other machine", ONE_PLAYER, MIXES),
        says("Yes: turn the level down, or else mix it with black", NEITHER, FADES, MIXES),
    ),
    rule=CUT,
)
FADE_IN = Effect(
    name="fade from black",
    wish=(
        "The film is to begin in the dark: at {code}, {shot} should come up slowly out of black.",
        "{person} wants {shot} to appear gradually, from black, beginning at {code}.",
    ),
    right="No: begin with a cut, or film the shot from darkness to light",
    because="A cut is all that this bench can make; a fade must already be on the source tape.",
    replies=(
        says("Yes: turn the picture level up from nothing while recording", NO_FADE, FADES),
        says("Yes: let the recorder go over from its black to the player", ONE_PLAYER, MIXES),
        says("Yes: either the level or the two machines together can do it", NEITHER, FADES, MIXES),
    ),
    rule=CUT,
)
DISSOLVE = Effect(
    name="dissolve",
    wish=(
        "{person} wants {talk} to melt into {shot}, for one second from {code}.",
        "From {code}, {shot} is to come up through {talk}, both being seen for a moment.",
    ),
    right="No: make a cut, or put a shot between them that leads over",
    because="Two pictures at once need two players and something to mix them.",
    replies=(
        says("Yes: let both machines run, and one goes over into the other", ONE_PLAYER, MIXES),
        says(
            "Yes: insert the second shot over the first, a few frames at a time",
            "Frame after frame it would still be one shot or the other, and it would flicker.",
        ),
        says(
            "No: shots as different as these can’t follow one another",
            "Any two shots can follow one another by a cut.",
        ),
    ),
    rule=CUT,
)
TITLE = Effect(
    name="title over a picture",
    wish=(
        "{person} wants {card} to be seen over {shot} while it moves, from {code}.",
        "At {code}, over {shot}, the words of {card} should stand in the picture.",
    ),
    right="No: show the card as a shot of its own, before or after it",
    because="Words over a moving picture are two pictures at once.",
    replies=(
        says("Yes: play the card while the recorder shows what it has", ONE_PLAYER, MIXES),
        says(
            "Yes: insert the card, and its black lets the picture through",
            "An insert replaces the whole picture, the black of the card included.",
        ),
        says(
            "No: a card can’t be copied from a source tape at all",
            "A card that was filmed is a shot like any other.",
        ),
    ),
    rule=CUT,
)
TWO_SOUNDS = Effect(
    name="two sounds at once, one channel",
    wish=(
        "Under {shot} there is its own sound. {person} wants {sound} to be heard together with "
        "it, from {code}. The machines record one sound channel.",
        "From {code}, {sound} is to lie on top of what is heard already; nothing of it may go. "
        "The edit master has one sound channel.",
    ),
    right="No: choose one, or bring a tape on which they are mixed",
    because="With one sound channel, what is recorded replaces what was there.",
    replies=(
        says(
            "Yes: the two machines run together, and the sounds are mixed",
            "The recorder takes the player’s sound in place of its own; it mixes nothing.",
            MIXES,
        ),
        says(
            "Yes: insert the sound softly, so that the old one stays beneath it",
            "However soft, an insert replaces what was there.",
        ),
        says(
            "No: once a shot is laid, its sound can’t be changed",
            "A sound insert changes it, but it replaces it.",
        ),
    ),
    rule=CUT,
)
SECOND_CHANNEL = Effect(
    name="two sounds at once, two channels",
    wish=(
        "Under {shot} there is its own sound, on the first of two sound channels; the second is "
        "silent. {person} wants {sound} to be heard together with it, from {code}.",
        "From {code}, {sound} is to lie on top of what is heard already; nothing of it may go. "
        "The edit master has two sound channels, and only the first has been used.",
    ),
    right="Yes: insert it on the second channel alone, and leave the first",
    because="Each channel is a track of its own, and whoever plays both hears both.",
    replies=(
        says(
            "Yes: assemble it on the second channel, which leaves the first",
            "An assemble records all there is: the picture, both channels and pulses.",
            "assemble-picks-tracks",
        ),
        says(
            "Yes: insert it on both channels, so softly that the old one stays",
            "However soft, an insert replaces what was on every channel that it records.",
        ),
        says(
            "No: an insert of sound replaces it, whichever channel it goes on",
            "It replaces what is on the channels that are chosen, and leaves the other alone.",
        ),
    ),
    rule=ONE_TRACK,
)
MIXED = (FADE_OUT, FADE_IN, DISSOLVE, TITLE, TWO_SOUNDS, SECOND_CHANNEL)
