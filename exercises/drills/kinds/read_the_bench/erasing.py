"""Two kinds of erase head, and what an edit is like on a recorder that has one, or both."""

from exercises.drills.judging.rules import TWO_KINDS_OF_ERASING
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.quay_street import TAPES
from exercises.drills.setting.scene import Scene

CLEAN = "A clean edit in and a clean edit out"
WIPED = "A clean edit in; past the edit out the tape is wiped"
JOINED_OUT_OF_PHASE = "A clean edit in; at the edit out the pulses jump"
COLOURED = "Bands of false colour behind the edit in, moving and then gone"
CANNOT = "No such edit: this recorder can’t make it"

INSERT = "insert, picture alone"
ASSEMBLE = "assemble"
# Erase heads on the drum, the edit, what lies on the tape where it begins; by what comes of it.
EDITS: dict[str, tuple[tuple[str, str, str], ...]] = {
    CLEAN: (
        ("fitted", INSERT, "the film so far"),
        ("fitted", INSERT, "black, from end to end"),
    ),
    WIPED: (
        ("fitted", ASSEMBLE, "an older recording"),
        ("fitted", ASSEMBLE, "the end of the last shot, then blank tape"),
        ("none", ASSEMBLE, "the end of the last shot, then blank tape"),
    ),
    COLOURED: (
        ("none", ASSEMBLE, "an older recording"),
        ("none", ASSEMBLE, "the spare end of the last shot"),
    ),
    CANNOT: (
        ("none", INSERT, "the film so far"),
        ("none", INSERT, "black, from end to end"),
    ),
}


def edited(scene: Scene) -> BenchReading:
    wiped = WIPED if scene.bench.erase_gap else JOINED_OUT_OF_PHASE
    found = scene.draw.pick(tuple(EDITS))
    drum, edit, there = scene.draw.pick(EDITS[found])
    at, tape = scene.code(scene.seconds(60, 900)), scene.draw.pick(TAPES)
    return BenchReading(
        name="erase-heads",
        story=f"The edit is to begin at {at} on the edit master, with a shot from {tape}. Both "
        "machines have run-up enough.",
        facts=(
            ("Full-width erase head", "fitted"),
            ("Erase heads on the drum", drum),
            ("Edit", edit),
            ("On the edit master at the edit in", there),
        ),
        legend="What is to be expected on most machines?",
        replies=replies(wiped),
        right=wiped if found == WIPED else found,
        rule=TWO_KINDS_OF_ERASING,
    )


def replies(wiped: str) -> dict[str, str]:
    """What there is to be said of each; `wiped` is how an assemble ends on this bench."""
    return {
        CLEAN: "That is an insert, cleared stripe by stripe by erase heads on the drum.",
        wiped: "That is an assemble that begins clean: the drum cleared it, or nothing lay behind "
        "the edit in. Its end is the full-width head’s doing.",
        COLOURED: "That is an assemble over a recording, without erase heads on the drum: new "
        "stripes lie over old ones until tape arrives that the full-width head has cleared.",
        CANNOT: "That is an insert without erase heads on the drum: the full-width head would "
        "clear all tracks, and far from the place.",
    }
