"""The six steps of every edit, as lesson 9 has them."""

from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before
from exercises.drills.kinds.put_in_order.steps import (
    BLACK_ALL_ALONG,
    COUNTER,
    CUE,
    CUE_PLAYER,
    CUE_RECORDER,
    LATER_ON,
    LOOK,
    MEND_AT_THE_END,
    MOVE_IN,
    NEW_TAPE,
    REHEARSE,
    TUNE_RECORDER,
)

SIX = ("mark", "set", "cue", "rehearse", "record", "look")
RULES = (
    Before("mark", "cue", "The pre-roll is counted from the edit in."),
    Before("set", "rehearse", "A rehearsal shows the edit as the recorder is set."),
    Before("set", "record", "In the wrong mode, one edit wipes what was to stay.", critical=True),
    Before("cue", "rehearse", "Both machines must be locked where the edit begins."),
    Before("cue", "record", "Without its run-up, the edit begins unsteady.", critical=True),
    Before("rehearse", "record", "A cut that is wrong costs nothing in a rehearsal."),
    Before("record", "look", "There is nothing to look at before it is recorded."),
)
NEEDS = {"look": "Until it is played, nobody has seen what is on the tape."}


def six(mark: str, mode: str, record: str) -> dict[str, str]:
    return dict(zip(SIX, (mark, mode, CUE, REHEARSE, record, LOOK), strict=True))


def mark(text: str, why: str, belief: str = "") -> Decoy:
    """Marks that some other edit wants."""
    return Decoy(step="other-marks", text=text, why=why, belief=belief, instead="mark")


def mode(text: str, why: str, belief: str = "") -> Decoy:
    """A mode that some other edit wants."""
    return Decoy(step="other-mode", text=text, why=why, belief=belief, instead="set")


CUES = (
    Decoy(
        step="cue-player",
        text=CUE_PLAYER,
        why="the recorder needs a run-up as well, over pulses in phase",
        belief="no-master-run-up",
        instead="cue",
    ),
    Decoy(
        step="cue-recorder",
        text=CUE_RECORDER,
        why="the player needs a run-up as well, inside the take",
        belief="no-source-run-up",
        instead="cue",
    ),
)
MEND_LATER = Decoy(
    step="mend-later",
    text=MEND_AT_THE_END,
    why="what is laid after a bad edit depends on it: it is made again at once",
    belief="mend-later",
    after="look",
)
TUNE = Decoy(
    step="tune",
    text=TUNE_RECORDER,
    why="the recorder’s tracking stays at its fixed position while it records",
    belief="tune-the-recorder",
    after="set",
)
COUNT = Decoy(
    step="counter",
    text=COUNTER,
    why="these tapes have time code; a counter counts from wherever it was set to zero",
    belief="counter-is-time-code",
    after="mark",
)
WIPE = Decoy(
    step="black-along",
    text=BLACK_ALL_ALONG,
    why="it would take the place of all that is laid",
)
BLACK_THERE = Decoy(
    step="black-along",
    text=BLACK_ALL_ALONG,
    why="black is there already, and the film lies over a part of it",
    belief="black-is-blank",
    after="mark",
)
LATE = Decoy(
    step="late",
    text=MOVE_IN,
    why="a late mark leaves a hole without pulses, and the shot behind it rolls",
    belief="late-is-safer",
    after="mark",
)
LATER = Decoy(
    step="later",
    text=LATER_ON,
    why="nothing moves: an insert records over what is there",
    belief="insert-pushes-along",
    after="look",
)
ANOTHER_TAPE = Decoy(
    step="new-tape",
    text=NEW_TAPE,
    why="a disturbance at an edit comes from the edit, not from the tape",
    belief="tape-fault",
    after="mark",
)
FADE = Decoy(
    step="fade",
    text="Turn the level down slowly, so that it ends softly",
    why="the level makes no fade of a picture: it leaves a flat, faulty one",
    belief="level-fades",
    after="cue",
)
PRE_ROLL = Decoy(
    step="pre-roll",
    text="Lengthen the pre-roll, and so help short run-ups",
    why="run-up is on the tape, or it is not: a longer pre-roll makes none",
    belief="pre-roll-makes-run-up",
    after="mark",
)
SPARE_WORD = Decoy(
    step="spare-word",
    text="Let a syllable go, if the cut falls into it",
    why="a clipped word is heard by whoever doesn’t know it: another mark is tried",
    belief="words-can-spare",
    after="rehearse",
)
AS_IT_WAS = Decoy(
    step="as-it-was",
    text="Keep to whatever setting the player has",
    why="each tape, and each take, wants a setting of its own",
    belief="set-once",
    after="set",
)
BY_ITSELF = Decoy(
    step="by-itself",
    text="Let the automatic level set the white of each shot",
    why="it takes the brightest thing for white, whatever that is: white is set by hand",
    after="set",
)
ANYWHERE = (BY_ITSELF, *CUES, MEND_LATER, PRE_ROLL, AS_IT_WAS)
