"""A picture that is looped from box to box: where the line ends, and what that makes of white."""

from dataclasses import dataclass

from exercises.drills.judging.rules import ENDS_ONCE
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.scene import Scene
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import USUAL, numbers, white_bar
from exercises.tape.levels import gained, looped

BOXES = ("the first monitor", "the waveform monitor", "the second monitor")
NEAR = 3  # IRE that white may be off and still be called right (common practice)
TOP = 120  # IRE that the display reaches up to

LAST_ON = "Switch on the 75 Ω of the last box in the loop"
OTHERS_OFF = "Switch off the 75 Ω of every box but the last"
LEVEL_OFF = "Leave the switches, and set the level of the picture"
NOTHING_OFF = "Leave both the switches and the level as they are"
REPLIES = {
    LAST_ON: "That is for a line that ends nowhere: it makes a level twice as high right.",
    OTHERS_OFF: "That is for a line with two ends: it makes a level of two thirds right.",
    LEVEL_OFF: "That is for a line that ends once, at its last box, and still reads wrong.",
    NOTHING_OFF: "That is for a line that ends once and reads what the card says.",
}


@dataclass(frozen=True, slots=True)
class Loop:
    """Which boxes have their end on, in order; `level` is what the source gives, of 1."""

    ends: tuple[bool, ...]
    level: float

    def reads(self, belongs: float) -> float:
        """IRE of something that belongs at so many."""
        return gained(self.level * belongs, looped(sum(self.ends)))

    def right(self, belongs: float) -> str:
        """What puts it right."""
        if self.ends == (False,) * len(self.ends):
            return LAST_ON
        if sum(self.ends) > 1:
            return OTHERS_OFF
        return NOTHING_OFF if abs(self.reads(belongs) - belongs) <= NEAR else LEVEL_OFF


def drawn(scene: Scene) -> Loop:
    """What is wrong is drawn first, so that each comes as often as another."""
    last = (False, False, True)
    others = ((True, False, True), (False, True, True))
    off = scene.draw.pick((*range(62, 80), *range(112, 120))) / 100
    return scene.draw.pick(
        (
            Loop((False, False, False), 1),
            Loop(scene.draw.pick(others), 1),
            Loop(last, off),
            Loop(last, scene.draw.whole(98, 102) / 100),
        )
    )


def loop_of_boxes(scene: Scene) -> BenchReading:
    lines = Lines.of(scene.rate)
    bars = USUAL[lines]
    belongs, loop = white_bar(bars, lines), drawn(scene)
    return BenchReading(
        name="looped",
        story="From the player, the picture is looped through three boxes, in this order. "
        "Bars are played, and looked at on the waveform monitor.",
        facts=(
            *switches(loop),
            ("On the card", f"bars {numbers(bars, lines)}"),
            ("The white bar reads", told(loop.reads(belongs), lines)),
        ),
        legend="What do you do?",
        replies=REPLIES,
        right=loop.right(belongs),
        rule=ENDS_ONCE,
    )


def switches(loop: Loop) -> list[tuple[str, str]]:
    return [
        (f"75 Ω of {box}", "on" if end else "off")
        for box, end in zip(BOXES, loop.ends, strict=True)
    ]


def told(ire: float, lines: Lines) -> str:
    if ire > TOP:
        return "off the top of the display"
    return f"{ire:.0f} IRE" if lines is Lines.L525 else f"{ire * lines.millivolts:.0f} mV"
