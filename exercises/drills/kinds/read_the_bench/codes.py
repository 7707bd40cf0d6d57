"""Where the edit master’s time code comes from, and where a counter is set to zero."""

from exercises.drills.judging.rules import CODE_OF_THE_MASTER, ZERO_TO_BE_FOUND
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene

STAYS = "The code that was laid with the black, as it was"
RUNS_ON = "Code that runs on from what lies before the edit in"
COPIED = "The code of the source tape, with a jump at the edit in"
NONE = "No code any more: sound lies in its place"
CODES = {
    STAYS: "An insert leaves the code alone, unless it records on the track that holds it.",
    RUNS_ON: "An assemble lays new code, and a recorder that carries it on begins with the next "
    "label.",
    COPIED: "An assemble lays new code, and a recorder that takes it from the player lays that "
    "of the source tape.",
    NONE: "Where code lies on a sound channel, an insert on that channel takes its place.",
}
CARRIES_ON, FROM_PLAYER = "carries it on from the tape", "takes it from the player"
OWN, SECOND = "a track of its own", "sound channel 2"
# Where the code lies, what the recorder does with it, the edit; by what code there is then.
LAID: dict[str, tuple[tuple[str, str, str], ...]] = {
    STAYS: (
        (OWN, CARRIES_ON, "insert, picture and both sound channels"),
        (SECOND, CARRIES_ON, "insert, picture and sound channel 1"),
        (OWN, FROM_PLAYER, "insert, sound channel 2"),
    ),
    RUNS_ON: ((OWN, CARRIES_ON, "assemble"), (SECOND, CARRIES_ON, "assemble")),
    COPIED: ((OWN, FROM_PLAYER, "assemble"), (SECOND, FROM_PLAYER, "assemble")),
    NONE: (
        (SECOND, CARRIES_ON, "insert, sound channel 2"),
        (SECOND, FROM_PLAYER, "insert, picture and both sound channels"),
    ),
}


def laid(scene: Scene) -> BenchReading:
    right = scene.draw.pick(tuple(LAID))
    where, source, edit = scene.draw.pick(LAID[right])
    at, tape = scene.code(scene.seconds(60, 900)), scene.draw.pick(TAPES)
    return BenchReading(
        name="code-of-the-master",
        story=f"The edit master was recorded with black and time code. At {at} an edit from "
        f"{tape} is made, with run-up enough on both machines.",
        facts=(
            ("Time code lies on", where),
            ("When it lays code, the recorder", source),
            ("Edit", edit),
        ),
        legend="Which time code stands on the new stretch then?",
        replies=CODES,
        right=right,
        rule=CODE_OF_THE_MASTER,
    )


BY_COUNTER = "Set it to zero there again, and go by it"
NOWHERE = "Look for the shot by eye: nobody finds that frame again"
SLIPS = "Look for the shot by eye: the counter has slipped on the way"
BY_CODE = "Leave the counter, and go by time code"
WAYS = {
    BY_COUNTER: "That is for a frame that can be recognised, with pulses from there to the shot.",
    NOWHERE: "That is for a counter that was set to zero where one frame is like the next.",
    SLIPS: "That is for a way on which pulses are missing: there the counter stands.",
    BY_CODE: "That is for a tape that has time code all along: each frame has its label.",
}
RECOGNISED = (
    "where the sheet is first held before the lens",
    "where the bars begin",
    "where a lamp goes on, in the first take",
    "at the first stroke of the bell",
)
ALIKE = (
    "where the tape stopped when it was rewound",
    "somewhere in the black at its head",
    "half-way through a shot of still water",
    "in the middle of a slow pan along the quay",
)
PULSES, HOLE = "pulses throughout", "a few seconds of blank tape, wiped since the log was made"
NO_CODE, CODE = "none", "all along"


def zeroed(scene: Scene) -> BenchReading:
    draw = scene.draw
    right = draw.pick(tuple(WAYS))
    place = draw.pick({NOWHERE: ALIKE, BY_CODE: (*ALIKE, *RECOGNISED)}.get(right, RECOGNISED))
    tape, shot = draw.pick(TAPES), draw.pick(ACTIONS).picture
    return BenchReading(
        name="counter-to-zero",
        story=f"Last week {tape} was logged by the counter, and the log says where it was set to "
        f"zero. {scene.person} wants to find {shot} again, at {scene.lasting(reading(scene))}.",
        facts=(
            ("Time code on the tape", CODE if right == BY_CODE else NO_CODE),
            ("The counter was set to zero", place),
            ("From there to the shot", HOLE if right == SLIPS else PULSES),
        ),
        legend="What do you do?",
        replies=WAYS,
        right=right,
        rule=ZERO_TO_BE_FOUND,
    )


def reading(scene: Scene) -> int:
    """What the log says, in whole seconds."""
    second = scene.rate.nominal
    return scene.seconds(30, 900) // second * second
