"""What the recorder’s monitor shows: what comes in, what is on the tape, or one after the other."""

from exercises.drills.judging.rules import IN_OR_TAPE
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.scene import Scene

INPUT = "What comes in from the player at that moment"
TAPE = "What lies on the edit master at that place"
BOTH = "The edit master up to the edit in, then what comes in"
REPLIES = {
    INPUT: "A recorder that stands or records sends on what comes in, and nothing of the tape.",
    TAPE: "Heads that play are what shows the tape: in playing, or behind the recording ones.",
    BOTH: "In a rehearsal, and in an edit, the tape plays up to the edit in; there the monitor "
    "goes over to what comes in.",
}
# The recorder, its output switch, heads that play behind the recording ones; by what is shown.
STATES: dict[str, tuple[tuple[str, str, str], ...]] = {
    INPUT: (
        ("stopped, the player plays", "automatic", "none"),
        ("recording without a stop", "automatic", "none"),
        ("recording without a stop", "input", "present"),
        ("stopped, the player plays", "input", "present"),
    ),
    TAPE: (
        ("playing back, the player stands", "automatic", "none"),
        ("playing back, the player plays too", "automatic", "none"),
        ("recording without a stop", "tape", "present"),
        ("playing back, the player plays too", "tape", "present"),
    ),
    BOTH: (
        ("rehearsing an edit, from the pre-roll on", "automatic", "none"),
        ("making an edit, from the pre-roll on", "automatic", "none"),
        ("rehearsing an edit, from the pre-roll on", "automatic", "present"),
    ),
}


def shown(scene: Scene) -> BenchReading:
    right = scene.draw.pick(tuple(STATES))
    recorder, switch, heads = scene.draw.pick(STATES[right])
    at = scene.code(scene.seconds(60, 900))
    return BenchReading(
        name="monitor",
        story=scene.draw.pick(
            (
                f"{scene.person} looks at the recorder’s monitor. The edit master is at {at}.",
                f"At {at} on the edit master, somebody asks what the recorder’s monitor shows.",
            )
        ),
        facts=(
            ("Recorder", recorder),
            ("Its output switch", switch),
            ("Heads that play while it records", heads),
        ),
        legend="What does that monitor show?",
        replies=REPLIES,
        right=right,
        rule=IN_OR_TAPE,
    )
