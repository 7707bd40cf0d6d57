"""Picture levels that are set on a waveform display: a white, bars by their card, black."""

from exercises.drills.judging.rules import BARS_BY_NAME, BLACK_LEVEL, WHITE_LEVEL
from exercises.drills.kinds.levels_on_paper import scale
from exercises.drills.kinds.levels_on_paper.case import HOT, LevelsCase, Turn
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, CARDS, TALKS, TAPES
from exercises.drills.setting.scene import Scene
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import BARS, numbers, white_bar
from exercises.tape.levels import WHITE

ALIKE = "bars-are-alike"
OFF = (*range(-34, -5), *range(5, 11))  # IRE that a white is read off its place


def facts(lines: Lines, what: str, read: str) -> tuple[tuple[str, str], ...]:
    return ("Meter", scale.picture(lines).name), ("As the knob stands", f"{what}: {read}")


def white(scene: Scene) -> LevelsCase:
    lines = Lines.of(scene.rate)
    display = scale.picture(lines)
    reading = read(WHITE + scene.draw.pick(OFF), lines)
    shot, tape = scene.draw.pick(ACTIONS).picture, scene.draw.pick(TAPES)
    return LevelsCase(
        name="white",
        story=scene.draw.pick(
            (
                f"{begun(shot)}, from {tape}: sunlight on the water is the brightest thing in it.",
                f"{begun(scene.draw.pick(CARDS).picture)}, from {tape}: its paper is to be white.",
                f"{begun(scene.draw.pick(TALKS).picture)}, from {tape}: a white wall behind is the "
                "brightest thing in the shot.",
            )
        ),
        facts=facts(lines, "the brightest white", display.told(reading)),
        rule=WHITE_LEVEL,
        turn=Turn(scale=display, reading=reading, lures={HOT: display.end}),
    )


def bars(scene: Scene) -> LevelsCase:
    lines, name = Lines.of(scene.rate), scene.draw.pick(tuple(BARS))
    belongs, tape = white_bar(name, lines), scene.draw.pick(TAPES)
    display, whole = scale.picture(lines, belongs), scale.picture(lines)
    reading = read(round(belongs) + scene.draw.pick(OFF), lines)
    lure = {HOT: display.end} if display.mark == whole.mark else {ALIKE: whole.mark}
    return LevelsCase(
        name="bars",
        story=f"{tape} begins with colour bars. They are to set the picture level for all that "
        f"is copied from it, {scene.draw.pick(ACTIONS).picture} first.",
        facts=(
            ("On the card", f"bars {numbers(name, lines)}, line-up tone 0 VU"),
            *facts(lines, "the white bar", display.told(reading)),
        ),
        rule=BARS_BY_NAME,
        turn=Turn(scale=display, reading=reading, lures=lure),
    )


def black(scene: Scene) -> LevelsCase:
    lines = Lines.of(scene.rate)
    display = scale.black(lines)
    off = scene.draw.pick((-4, -3, 3, 4, 5, 6, 7, 8) if lines.setup else (*range(3, 13),))
    reading = lines.setup + off if lines.setup else read(off, lines)
    tape = scene.draw.pick(TAPES)
    return LevelsCase(
        name="black",
        story=scene.draw.pick(
            (
                f"{begun(scene.draw.pick(ACTIONS).picture)}, from {tape}: the darkest part of "
                "the shot is to be black.",
                f"{tape} begins with colour bars. White is set; now black is looked at, on the "
                "last bar.",
            )
        ),
        facts=facts(lines, "black", display.told(reading)),
        rule=BLACK_LEVEL,
        turn=Turn(
            scale=display,
            reading=reading,
            slips={0: "That would be blanking: at 525 lines, black stands over it."}
            if lines.setup
            else {},
            knob="black level",
        ),
    )


def read(ire: int, lines: Lines) -> int:
    """A level as the display shows it."""
    return ire if lines is Lines.L525 else round(ire * lines.millivolts)
