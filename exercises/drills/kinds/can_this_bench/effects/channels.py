"""Two sounds at once, and sound that is faded: channels and the mixer."""

from exercises.drills.judging.rules import (
    CHANNEL_BY_CHANNEL,
    SOUND_MIXES,
)
from exercises.drills.kinds.can_this_bench.answers import (
    ASSEMBLE,
    BY_HAND,
    CUT,
    ELSEWHERE,
    FILM_IT,
    INSERT_PICTURE,
    INSERT_SOUND,
    LAY_AGAIN,
    MIX,
    ONE_BY_ONE,
    ONE_CHANNEL,
    OTHER_TAKE,
    SAME_LENGTH,
    SPLIT,
    TWO_EDITS,
)
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import why

CHANNELS = (
    Effect(
        name="a second sound beside the first",
        wish="{shot} has its own sound, on the first of two sound channels; the second is silent. "
        "{person} wants {sound} to be heard as well, from {code}.",
        right=ONE_CHANNEL,
        because="Each channel is a track of its own, and whoever plays both hears both.",
        wrong={
            ASSEMBLE: why.TAKES_ALL + " It leaves no channel alone.",
            INSERT_SOUND: "On both channels, it would take the place of the first sound.",
            SPLIT: "Earlier or later, on both channels it replaces the first sound.",
            ONE_BY_ONE: "It can be had as asked: there are two channels.",
        },
        held={ASSEMBLE: "assemble-picks-tracks"},
        rule=CHANNEL_BY_CHANNEL,
    ),
    Effect(
        name="a new voice beside the old harbour",
        wish="The voice lies on channel 1 and the harbour on channel 2. From {code} the voice is "
        "to be {sound} instead, and the harbour is to stay.",
        right=ONE_CHANNEL,
        because="An insert records the channels that are chosen; the harbour is on the other.",
        wrong={
            INSERT_SOUND: "On both channels, it would take the harbour away.",
            LAY_AGAIN: "What follows is as it should be.",
            MIX: "Only the new voice is on a tape by itself, so the old one would stay.",
        },
        rule=CHANNEL_BY_CHANNEL,
    ),
    Effect(
        name="music under a whole scene",
        wish="Under a scene that is laid, from {code}, the ferry’s music is to be heard softly. "
        "The voices are on channel 1; channel 2 holds nothing that is needed.",
        right=ONE_CHANNEL,
        because="The voices stay as they are; how soft the music is, is set while it is laid.",
        wrong={
            MIX: "The voices are on the tape that records, and can’t come from it meanwhile.",
            INSERT_PICTURE: "Then nothing new is heard.",
            ELSEWHERE: "It can be made here: a channel is free.",
        },
        rule=CHANNEL_BY_CHANNEL,
    ),
    Effect(
        name="a sound that dies away",
        wish="While the last shot is copied, {sound} is to get softer and softer, until nothing is "
        "heard at {code}.",
        right=BY_HAND,
        because="Sound passes through the mixer: ride it down, as you have rehearsed it.",
        wrong={
            FILM_IT: "That is so for a picture. Sound can be faded while it is copied.",
            ONE_BY_ONE: "It can be had as asked: sound can be faded while it is copied.",
            SAME_LENGTH: "Another sound would not get softer either.",
        },
        rule=SOUND_MIXES,
    ),
    Effect(
        name="a voice that turns away",
        wish="In {talk} the speaker turns away half-way and is much softer from there. {person} "
        "wants to lay it in one piece, and every word to be heard well.",
        right=BY_HAND,
        because="Follow the voice slowly, between two sentences: rehearse it, note both settings.",
        wrong={
            OTHER_TAKE: "This one will do: a voice can be followed by hand.",
            MIX: "There is one voice, once softer: nothing is mixed.",
            SPLIT: "The voice would be as soft, and beside its lips.",
        },
        rule=SOUND_MIXES,
    ),
    Effect(
        name="a voice in the room",
        wish="{person} wants to speak into a microphone, which is on the mixer, while {shot} is "
        "copied, so that the two are heard together from {code}. There is one sound channel.",
        right=MIX,
        because="On one channel, two sounds at once need a mixer and a second source, and both are "
        "there.",
        wrong={
            ELSEWHERE: "For sound there is a mixer on this bench, and the second source is there.",
            ONE_BY_ONE: "It can be had as asked: the mixer takes two sounds.",
            INSERT_SOUND: why.REPLACES,
        },
        rule=SOUND_MIXES,
    ),
    Effect(
        name="gulls from a sound machine",
        wish="A sound machine with gulls on it stands on the mixer. {person} wants to lay {shot} "
        "at {code} with its own sound and the gulls, on the one channel that there is.",
        right=MIX,
        because="The mixer takes player and sound machine at once, while it is copied.",
        wrong={
            ONE_CHANNEL: "There is but one, and a second recording on it replaces the first.",
            ELSEWHERE: "For sound it can be made here: mixer and second source are there.",
            TWO_EDITS: "The second recording would replace the sound of the first.",
        },
        rule=SOUND_MIXES,
    ),
    Effect(
        name="two sounds and one channel",
        wish="{shot} is laid with its own sound, and its source tape has gone back. From {code} "
        "{sound}, on the player, is to be heard as well. There is one sound channel.",
        right=ELSEWHERE,
        because="What is recorded on one channel replaces what was there.",
        wrong={
            MIX: "The old sound is on the tape that records: it can’t be played into the mixer.",
            ONE_CHANNEL: "There is but one, and the old sound is on it.",
            BY_HAND: why.REPLACES,
        },
        held={MIX: "two-machines-dissolve"},
        rule=SOUND_MIXES,
    ),
    Effect(
        name="a sound that comes up",
        wish="Behind the last words before {code}, {sound} is to come up out of silence, slowly, "
        "while it is laid over pictures that are there.",
        right=BY_HAND,
        because="Sound passes through the mixer: it can be faded while it is copied.",
        wrong={
            FILM_IT: "That is so for a picture. Sound can be faded while it is copied.",
            ELSEWHERE: "It can be made here: the mixer has a level for it.",
            CUT: "It can be had as asked: sound can be faded while it is copied.",
        },
        rule=SOUND_MIXES,
    ),
)
