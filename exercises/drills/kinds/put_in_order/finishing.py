"""What is done once all shots are laid: checking, a dub, a change after all."""

from exercises.drills.judging.rules import AT_ONCE, DUB_OF_THE_MASTER, MOVES
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import (
    BLACK_ALL_ALONG,
    LATER_ON,
    MOVE_OUT,
    NEW_TAPE,
    TUNE_PLAYER,
)

CHECK = StandingProcedure(
    name="check the whole film",
    task="All shots are laid, the last of them {shot}. Check the whole edit master before "
    "anybody else sees it, and make it safe.",
    steps={
        "player": TUNE_PLAYER,
        "eyes": "Watch it from the first frame to the last, without stopping",
        "ears": "Turn your back, and listen to all of it",
        "mend": "Mend what was noted, and play each mend",
        "protect": "Set its tab so that nothing can record on it",
        "label": "Write its label: what it is, where the film begins and ends",
    },
    rules=(
        Before("player", "eyes", "Else a fault of the playing looks like one of the film."),
        Before("eyes", "mend", "What is wrong must be known before it is mended."),
        Before("ears", "mend", "What is wrong must be known before it is mended."),
        Before("mend", "protect", "Once it is protected, nothing can be mended."),
        Before("protect", "label", "A tired hand soon presses record: that is stopped first."),
    ),
    flaws=(),
    decoys=(
        Decoy(
            step="black-along",
            text=BLACK_ALL_ALONG,
            why="it would take the place of the film",
        ),
        Decoy(
            step="new-tape",
            text=NEW_TAPE,
            why="a disturbance at an edit comes from the edit, and is mended on its tape",
            belief="tape-fault",
            after="ears",
        ),
    ),
    needs={"label": "A tape without a label gets recorded over."},
    otherwise={
        "eyes": "Look at all of it, from beginning to end, in one go",
        "ears": "Listen to all of it with your back to the screen",
    },
    rule=AT_ONCE,
)
DUB = StandingProcedure(
    name="make a dub",
    task="The film is finished, and ends at {code}. Make a dub of it for the hall.",
    steps={
        "protect": "Make sure that nothing can record on the edit master",
        "swap": "Put it into the player, and a new tape into the recorder",
        "set": "Set both machines up, by the bars and the tone of its leader",
        "black": "Record black on the new tape, longer than a run-up",
        "run": "Assemble all of the film, and some of the black behind it",
        "watch": "Watch the dub from the first frame to the last",
    },
    rules=(
        Before(
            "protect",
            "swap",
            "Two tapes that look alike are soon mistaken for one another.",
            critical=True,
        ),
        Before("swap", "set", "By its own bars it is set, and so it has to play."),
        Before(
            "swap",
            "black",
            "Before that, the tape in the recorder is the film.",
            critical=True,
        ),
        Before("set", "run", "What is copied wrong stays wrong.", critical=True),
        Before("black", "run", "The recorder needs a run-up before it.", critical=True),
        Before("run", "watch", "There is nothing to watch before it is recorded."),
    ),
    flaws=(
        Flaw(belief="no-master-run-up", step="black"),
        Flaw(belief="replay-repairs", step="set", after="run"),
    ),
    decoys=(
        Decoy(
            step="first-dub",
            text="Copy an earlier dub, if there is one",
            why="each copy adds noise: every dub is made from the edit master",
            belief="copy-is-free",
            after="protect",
        ),
    ),
    needs={"watch": "A dub that nobody has seen is a hope, not a copy."},
    otherwise={
        "black": "Lay black on the new tape first, for its run-up",
        "watch": "See the whole dub once",
    },
    rule=DUB_OF_THE_MASTER,
)
LONGER = StandingProcedure(
    name="a shot made longer",
    task="All is laid, by inserts over prepared black. Now {shot}, from {tape}, is to stay two "
    "seconds longer at {code}, and nothing behind it may be lost.",
    steps={
        "paper": "Change its length on the paper edit",
        "later": LATER_ON,
        "tapes": "Look out the source tapes of all that follows",
        "shot": "Lay the longer shot, picture and sound",
        "following": "Lay all that follows again, shot by shot, each as it is noted",
        "look": "Play from before the longer shot to the end",
    },
    rules=(
        Before("paper", "later", "What follows depends on the new length."),
        Before("later", "following", "Without new places, there is a hole, or a shot is covered."),
        Before("tapes", "shot", "What is covered must be laid again.", critical=True),
        Before("shot", "following", "Laid last, it would cover the next shot.", critical=True),
        Before("following", "look", "There is nothing to look at before it is laid."),
    ),
    flaws=(Flaw(belief="insert-pushes-along", step="following"),),
    decoys=(
        Decoy(
            step="whole",
            text=MOVE_OUT,
            why="the next shot begins where the longer one ends, wherever that is",
        ),
        Decoy(
            step="black-along",
            text=BLACK_ALL_ALONG,
            why="black is there already, and the film lies over it",
            belief="black-is-blank",
            after="tapes",
        ),
    ),
    needs={"look": "Until it is played, nobody has seen what is on the tape."},
    otherwise={
        "paper": "Correct its length on paper",
        "tapes": "Fetch the source tapes of all that comes after",
    },
    rule=MOVES,
)
FINISHING = (CHECK, DUB, LONGER)
