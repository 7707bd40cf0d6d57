"""Setting up the player, the recorder and the sound."""

from exercises.drills.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.rules import FIXED_POSITION, SET_UP_FIRST, SPEECH_BY_HAND

PLAYER = Procedure(
    name="set up the player",
    task="{tape} has just come from the camera. From it, {shot} is to be copied. "
    "Set up the player and make the copy.",
    steps={
        "play": "Play {tape} a little before the shot",
        "tracking": "Turn the player’s tracking until the meter peaks and no noise band shows",
        "skew": "Turn skew until verticals stand straight",
        "level": "Set the picture level on the brightest white of the shot",
        "look": "Play the shot once more and look at the whole of it",
        "record": "Record the copy",
    },
    rules=(
        Before("play", "tracking", "Only a tape that plays shows where tracking is right."),
        Before(
            "tracking", "skew", "As long as a noise band shows, verticals can’t be judged well."
        ),
        Before("tracking", "level", "A level read from a noisy picture is not to be trusted."),
        Before("skew", "look", "The last look is for everything that was set."),
        Before("level", "look", "The last look is for everything that was set."),
        Before(
            "tracking",
            "record",
            "A noise band is copied with the picture, and stays in the copy.",
            critical=True,
        ),
        Before(
            "level",
            "record",
            "What the copy has clipped, or lost in its noise, no playback brings back.",
            critical=True,
        ),
        Before("look", "record", "After the recording, looking comes too late for this copy."),
    ),
    flaws=(
        Flaw(belief="replay-repairs", step="tracking", after="record"),
        Flaw(belief="level-is-seen-later", step="level", after="record"),
        Flaw(belief="set-once", step="look"),
        Flaw(belief="tune-the-recorder", step="turn-recorder", after="play"),
    ),
    rule=SET_UP_FIRST,
    decoys={
        "turn-recorder": (
            "Turn the recorder’s tracking until its picture looks best",
            "the recorder’s tracking stays at its fixed position while it records",
        ),
    },
)
RECORDER = Procedure(
    name="set up the recorder",
    task="The bench stands as the last people left it. Set up the recorder for the day, "
    "before {shot} is laid.",
    steps={
        "fixed": "Put the recorder’s tracking at its fixed position",
        "input": "Choose the player as what the recorder records",
        "gain": "Switch automatic gain off",
        "tone": "Play tone and set the sound level to 0 VU",
        "trial": "Record half a minute on a spare tape",
        "back": "Play the trial back, and look and listen",
        "edit": "Thread the edit master and make the first edit",
    },
    rules=(
        Before("fixed", "trial", "The trial is to show how the recorder will record."),
        Before("input", "tone", "Tone must reach the recorder before its level can be set."),
        Before("gain", "tone", "Automatic gain would set a level of its own under the tone."),
        Before("tone", "trial", "The trial is to show the level as well."),
        Before("trial", "back", "There is nothing to play back before the trial."),
        Before(
            "fixed",
            "edit",
            "What is recorded with tracking turned lies where other machines don’t look for it.",
            critical=True,
        ),
        Before("back", "edit", "A fault that the trial shows would already be on the edit master."),
    ),
    flaws=(
        Flaw(belief="tune-the-recorder", step="best", after="trial"),
        Flaw(belief="agc-evens-out", step="gain"),
        Flaw(belief="hotter-is-better", step="hot", after="tone"),
    ),
    rule=FIXED_POSITION,
    decoys={
        "best": (
            "Turn the recorder’s tracking while it records, for the best picture",
            "while it records, its tracking stays at its fixed position",
        ),
        "hot": (
            "Turn the sound level up until tone stands at the end of the scale",
            "what is louder than tone would then distort, and can’t be put right later",
        ),
    },
)
SOUND = Procedure(
    name="record speech",
    task="{tape} holds {sound}. Set the sound level and record it over the picture that is there.",
    steps={
        "listen": "Play it through and find the loudest words",
        "gain": "Switch automatic gain off",
        "level": "Set the sound level so that the loudest words just reach 0 VU",
        "insert": "Choose insert, sound alone",
        "record": "Record",
        "check": "Play the edit from before its first word; listen for clipped words, breaths",
        "next": "Go on to the next shot",
    },
    rules=(
        Before("listen", "level", "The level is set on the loudest words, so find them first."),
        Before("gain", "level", "Under automatic gain the meter doesn’t show what you set."),
        Before(
            "level",
            "record",
            "Sound that is recorded too loud stays distorted.",
            critical=True,
        ),
        Before(
            "insert",
            "record",
            "In any other mode the picture that is there is recorded over.",
            critical=True,
        ),
        Before("record", "check", "There is nothing to listen to before it is recorded."),
        Before("check", "next", "A bad edit is mended at once, before anything depends on it."),
    ),
    flaws=(
        Flaw(belief="agc-evens-out", step="gain"),
        Flaw(belief="words-can-spare", step="check"),
        Flaw(belief="hotter-is-better", step="hot", after="level"),
    ),
    rule=SPEECH_BY_HAND,
    decoys={
        "hot": (
            "Then turn it up as far as the meter goes, to be safe",
            "past the end of the scale words distort, and can’t be put right later",
        ),
    },
)
