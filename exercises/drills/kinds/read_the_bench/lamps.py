"""The lamps of a recorder: dew, reference, servo lock."""

from exercises.drills.judging.rules import THREE_LAMPS
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.scene import Scene

STOP = "Stop, touch nothing more, and fetch the person in charge"
LEAD = "Find out why no reference arrives, lead by lead"
WAIT = "Let the tape run on until the servo lamp is steady"
GO_ON = "Go on and record, for the lamps say that it can"
REPLIES = {
    STOP: "With the dew lamp lit the drum is damp, and the tape that runs round it may stick. The "
    "power stays on; how the tape comes out is for the person in charge.",
    LEAD: "With the reference lamp dark the recorder has nothing to keep step with; it may seem "
    "to work, and cut unsteadily.",
    WAIT: "Until the servo lamp is steady the machine is not locked, and what it recorded now "
    "would be unsettled.",
    GO_ON: "No dew, a reference, and locked: that is what the lamps are for.",
}
# Dew, reference, servo lock, by what they ask for.
LIT: dict[str, tuple[tuple[str, str, str], ...]] = {
    STOP: (("lit", "lit", "dark"), ("lit", "dark", "dark"), ("lit", "lit", "lit")),
    LEAD: (("dark", "dark", "dark"), ("dark", "dark", "lit"), ("dark", "dark", "blinking")),
    WAIT: (("dark", "lit", "dark"), ("dark", "lit", "blinking")),
    GO_ON: (("dark", "lit", "lit"),),
}


def lit(scene: Scene) -> BenchReading:
    right = scene.draw.pick(tuple(LIT))
    dew, reference, servo = scene.draw.pick(LIT[right])
    at = scene.code(scene.seconds(60, 900))
    before = scene.draw.pick(
        (
            f"The recorder plays, a second before the edit in at {at}.",
            f"The edit master runs up to {at}, where the next shot is to begin.",
            f"In the pre-roll for an edit at {at}, {scene.person} looks at the recorder’s lamps.",
        )
    )
    return BenchReading(
        name="lamps",
        story=f"{before} On this bench, the reference lamp is lit while a reference arrives.",
        facts=(("Dew", dew), ("Reference", reference), ("Servo lock", servo)),
        legend="What do you do?",
        replies=REPLIES,
        right=right,
        rule=THREE_LAMPS,
    )
