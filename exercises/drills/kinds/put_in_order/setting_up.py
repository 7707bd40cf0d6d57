"""Setting up the player and the recorder, and playing an old tape."""

from exercises.drills.judging.rules import FIXED_POSITION, SET_UP_FIRST
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import (
    FIXED,
    LOOK,
    TUNE_PLAYER,
    TUNE_RECORDER,
)

STAYS = "the recorder’s tracking stays at its fixed position while it records"

PLAYER = StandingProcedure(
    name="set up the player",
    task="{tape} has just come from the camera, and is in the player. Set it up for {shot}, "
    "and make the copy.",
    steps={
        "play": "Play it, a little before the shot",
        "tracking": TUNE_PLAYER,
        "skew": "Set skew until uprights stand straight",
        "level": "Set the picture level on the brightest white of the shot",
        "through": "Play the whole shot once more, and look",
        "record": "Record the copy",
        "look": LOOK,
    },
    rules=(
        Before("play", "tracking", "Only a tape that plays shows where tracking is right."),
        Before("tracking", "skew", "While a noise band shows, uprights can’t be judged."),
        Before("tracking", "level", "A level read from a noisy picture is not to be trusted."),
        Before("skew", "through", "This look is for everything that was set."),
        Before("level", "through", "This look is for everything that was set."),
        Before("tracking", "record", "A noise band stays in the copy.", critical=True),
        Before(
            "level", "record", "What the copy has clipped, no playback brings back.", critical=True
        ),
        Before("through", "record", "Afterwards, looking comes too late for this copy."),
        Before("record", "look", "There is nothing to look at before it is recorded."),
    ),
    flaws=(
        Flaw(belief="replay-repairs", step="tracking", after="record"),
        Flaw(belief="level-is-seen-later", step="level", after="record"),
        Flaw(belief="set-once", step="through"),
    ),
    decoys=(
        Decoy(
            step="tune",
            text=TUNE_RECORDER,
            why=STAYS,
            belief="tune-the-recorder",
            after="play",
        ),
    ),
    needs={"look": "Until it is played, nobody has seen what is on the tape."},
    otherwise={
        "play": "Let it play, from a little before the shot",
        "through": "Look at the whole shot once more",
    },
    rule=SET_UP_FIRST,
)
RECORDER = StandingProcedure(
    name="set up the recorder",
    task="The bench stands as the last people left it. Set up the recorder for the day, "
    "before {shot} is laid.",
    steps={
        "fixed": FIXED,
        "input": "Choose the player as what the recorder records",
        "gain": "Switch automatic gain off, and automatic picture level too",
        "tone": "Play bars and tone, and set both levels by them",
        "trial": "Record half a minute on a spare tape",
        "back": "Play that back, and look and listen",
        "edit": "Put the edit master in",
    },
    rules=(
        Before("fixed", "trial", "The trial is to show how the recorder will record."),
        Before("input", "tone", "Tone must reach the recorder before its level can be set."),
        Before("gain", "tone", "Automatic levels would set levels of their own."),
        Before("tone", "trial", "The trial is to show the levels as well."),
        Before("trial", "back", "There is nothing to play back before the trial."),
        Before(
            "fixed",
            "edit",
            "What is recorded with tracking turned lies where other machines don’t look for it.",
            critical=True,
        ),
        Before("back", "edit", "A fault that the trial shows would be on the edit master."),
    ),
    flaws=(Flaw(belief="agc-evens-out", step="gain"),),
    decoys=(
        Decoy(
            step="tune",
            text=TUNE_RECORDER,
            why=STAYS,
            belief="tune-the-recorder",
            after="trial",
        ),
        Decoy(
            step="hot",
            text="Set the sound level as high as the meter shows",
            why="what is louder than tone would then distort for good",
            belief="hotter-is-better",
            after="tone",
        ),
    ),
    needs={"edit": "The recorder was set up for it."},
    otherwise={
        "input": "Switch the recorder’s input to the player",
        "back": "Look at that, and listen to it",
    },
    rule=FIXED_POSITION,
)
OLD_TAPE = StandingProcedure(
    name="an old tape on the recorder",
    task="The player is away. {tape}, which an old camera made, is to be looked through on the "
    "recorder; then the edit master goes on.",
    steps={
        "protect": "Set its tab so that nothing can record on it",
        "in": "Put it into the recorder",
        "tune": TUNE_RECORDER,
        "watch": "Look it through, and take it out",
        "fixed": FIXED,
        "trial": "Record half a minute on a spare tape, and play that",
    },
    rules=(
        Before("protect", "in", "In a recorder, one wrong switch wipes it.", critical=True),
        Before("in", "tune", "Only a tape that plays shows where tracking is right."),
        Before("tune", "watch", "Behind a noise band, half of it can’t be seen."),
        Before("watch", "fixed", "It is for recording: the old tape would have its band again."),
        Before(
            "fixed", "trial", "The trial is to show how the recorder will record.", critical=True
        ),
    ),
    flaws=(Flaw(belief="tune-the-recorder", step="fixed"),),
    decoys=(
        Decoy(
            step="player",
            text=TUNE_PLAYER,
            why="it is the recorder that plays this tape",
        ),
    ),
    needs={"trial": "Whether the recorder is in order again, only a trial shows."},
    otherwise={
        "in": "Thread it in the recorder",
        "watch": "Watch all of it, and take it out again",
    },
    rule=FIXED_POSITION,
)
SET_UP = (PLAYER, RECORDER, OLD_TAPE)
