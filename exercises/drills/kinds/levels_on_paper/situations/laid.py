"""A shot that is laid: how it measures, how it looks, and what is to be done about it."""

from collections.abc import Callable

from exercises.drills.judging.rules import BY_THE_WAVEFORM, LEVEL_IS_LAID
from exercises.drills.kinds.levels_on_paper import scale
from exercises.drills.kinds.levels_on_paper.afterwards import WhiteShot, afterwards
from exercises.drills.kinds.levels_on_paper.case import LevelsCase
from exercises.drills.kinds.levels_on_paper.situations.pictures import read
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene
from exercises.signal.lines import Lines
from exercises.tape.limits import LIMITS


def too_low(draw: Draw) -> WhiteShot:
    return WhiteShot(draw.whole(94, 104), draw.whole(56, 72), "grey")


def too_high(draw: Draw) -> WhiteShot:
    return WhiteShot(draw.whole(94, 104), draw.whole(118, 132), "glaring")


def clipped_when_shot(draw: Draw) -> WhiteShot:
    return WhiteShot(draw.whole(118, 128), draw.whole(94, 104))


def monitor_off(draw: Draw) -> WhiteShot:
    return WhiteShot(draw.whole(94, 104), draw.whole(96, 104), draw.pick(("grey", "glaring")))


def well(draw: Draw) -> WhiteShot:
    return WhiteShot(draw.whole(90, 106), draw.whole(96, 104))


# What is to be done is drawn first, so that each comes as often as another.
SHOTS: tuple[tuple[Callable[[Draw], WhiteShot], ...], ...] = (
    (too_low, too_high),
    (clipped_when_shot,),
    (monitor_off,),
    (well,),
)


def shot(scene: Scene) -> LevelsCase:
    made = scene.draw.pick(scene.draw.pick(SHOTS))
    shot, lines = made(scene.draw), Lines.of(scene.rate)
    tape, picture = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    return LevelsCase(
        name=made.__name__.replace("_", "-"),
        story=f"The shot from {tape} is laid, and played back: {picture}. There is a white in it.",
        facts=(
            ("Waveform display, source tape", stands(shot.source, shot, lines)),
            ("Waveform display, edit master", stands(shot.laid, shot, lines)),
            ("Monitor, edit master", f"white looks {shot.looks}"),
        ),
        rule=BY_THE_WAVEFORM if made is monitor_off else LEVEL_IS_LAID,
        choosing=afterwards(shot, scene.bench),
    )


def stands(white: int, shot: WhiteShot, lines: Lines) -> str:
    """A white on the display, in its unit; once it was clipped, its detail is gone."""
    display, most = scale.picture(lines), LIMITS.clipped_picture
    told = display.told(read(min(white, most), lines))
    return f"white at {told}, {'flat' if max(white, shot.source) > most else 'with detail'}"
