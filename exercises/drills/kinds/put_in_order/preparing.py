"""Preparing an edit master: its leader, or black along all of it."""

from exercises.drills.judging.rules import LEADER_FIRST, NO_PULSES
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw
from exercises.drills.kinds.put_in_order.standing import StandingProcedure
from exercises.drills.kinds.put_in_order.steps import (
    BLACK_ALL_ALONG,
    MOVE_IN,
    SET_ASSEMBLE,
    SET_BOTH,
    WIND_ONCE,
)

LEADER = StandingProcedure(
    name="lay a leader",
    task="A new tape is to become an edit master, shot by shot, by assemble. Lay a leader, then "
    "the first shot: {shot}, from {tape}.",
    steps={
        "wind": WIND_ONCE,
        "first": "Record black from the very start, longer than a run-up",
        "bars": "Assemble bars and tone",
        "slate": "Assemble a card that names the film and its bars",
        "black": "Assemble black, up to where the film begins",
        "shot": "Assemble the first shot",
        "look": "Play all of it from the start",
    },
    rules=(
        Before("wind", "first", "A tape from the box is wound before it is recorded on."),
        Before(
            "first",
            "bars",
            "Before any edit there must be pulses for the recorder to lock to.",
            critical=True,
        ),
        Before("bars", "slate", "Bars and tone come first: machines are set on them."),
        Before("slate", "black", "Black comes last, so that the film begins from black."),
        Before(
            "black",
            "shot",
            "Assembled after the shot, black would not end cleanly before it.",
            critical=True,
        ),
        Before("shot", "look", "There is nothing to look at before it is laid."),
    ),
    flaws=(
        Flaw(belief="no-master-run-up", step="first"),
        Flaw(belief="assemble-ends-clean", step="black", after="shot"),
    ),
    decoys=(
        Decoy(
            step="gap",
            text=MOVE_IN,
            why="a hole holds no pulses: the picture is lost there, and rolls after it",
            belief="gap-heals",
            after="slate",
        ),
        Decoy(
            step="insert",
            text=SET_BOTH,
            why="where there are no pulses, nothing locks to what an insert lays",
            belief="insert-lays-pulses",
            after="first",
        ),
        Decoy(
            step="black-along",
            text=BLACK_ALL_ALONG,
            why="each assemble lays pulses of its own, and would break those of the black",
        ),
    ),
    needs={"look": "Until it is played, nobody has seen what is on the tape."},
    otherwise={
        "bars": "Assemble colour bars, with tone",
        "slate": "Assemble the card: which film, which bars",
    },
    rule=LEADER_FIRST,
)
BLACK = StandingProcedure(
    name="prepare a tape with black",
    task="The next film is to be laid by inserts. Take a tape from the box, and prepare it.",
    steps={
        "rest": "Let it lie in the room until it is as warm as that",
        "name": "Write the film’s name on it, and what it is",
        "in": "Put it into the recorder, and wait until it is threaded",
        "wind": WIND_ONCE,
        "black": BLACK_ALL_ALONG,
        "check": "Play parts of it: are there pulses to the end?",
    },
    rules=(
        Before("rest", "in", "A cold tape draws dew, and a damp tape sticks.", critical=True),
        Before("in", "wind", "It is wound in the machine."),
        Before("wind", "black", "A tape from the box is wound before it is recorded on."),
        Before("black", "check", "There is nothing to see before it is recorded."),
    ),
    flaws=(
        Flaw(belief="insert-lays-pulses", step="black"),
        Flaw(belief="plays-without-pulses", step="check"),
    ),
    decoys=(
        Decoy(
            step="bit-by-bit",
            text="Record black again wherever a shot will begin",
            why="where a second recording begins, the pulses jump",
        ),
        Decoy(
            step="assemble",
            text=SET_ASSEMBLE,
            why="on a tape with black, an assemble would break its pulses",
        ),
    ),
    needs={
        "name": "A tape without a name gets recorded over.",
        "check": "Whether it can be used, only the check shows.",
    },
    otherwise={
        "rest": "Let it lie until it has the room’s warmth",
        "check": "Look here and there whether it has pulses, and at its end",
    },
    rule=NO_PULSES,
)
PREPARING = (LEADER, BLACK)
