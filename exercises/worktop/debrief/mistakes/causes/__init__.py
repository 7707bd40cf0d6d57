"""Where a mistake comes from: which edit, and how everything stood when it was made."""

from collections.abc import Callable, Mapping, Sequence

from exercises.drills.setting.phrases import listed
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.causes import controls, places, pulses
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.wording import named

Parts = Sequence[Finding]
Telling = Callable[[EditMade, Parts, Proceedings], str]


def cause(kind: MistakeKind, made: Sequence[EditMade], parts: Parts, run: Proceedings) -> str:
    """One sentence, and a few words where several edits were made so."""
    if not made and kind is MistakeKind.NOT_LAID:
        return "No edit of yours laid it."
    if not made:
        return "It was so before you sat down."
    first, *more = made
    told = f"{named(first, run.bench)}, {TOLD[kind](first, parts, run)}."
    if not more:
        return told
    numbers = listed([str(each.number) for each in more])
    edits = f"edit{'s' if len(more) > 1 else ''} {numbers}"
    if kind is MistakeKind.MISPLACED:
        return f"{told} As far off: {edits}."
    return f"{told} So {'were' if len(more) > 1 else 'was'} {edits}."


TOLD: Mapping[MistakeKind, Telling] = {
    MistakeKind.NOT_LAID: places.left,
    MistakeKind.TRACK_LEFT: places.left,
    MistakeKind.WIPED: pulses.wiped,
    MistakeKind.RECORDED_OVER: places.over,
    MistakeKind.NO_PULSES: pulses.no_pulses,
    MistakeKind.HOLE: pulses.hole,
    MistakeKind.SOURCE_RUN_UP: pulses.source_run_up,
    MistakeKind.MASTER_RUN_UP: pulses.master_run_up,
    MistakeKind.NEW_TAKE: pulses.new_take,
    MistakeKind.CUT_SHORT: places.wrong_shot,
    MistakeKind.BLANK_SOURCE: places.blank_source,
    MistakeKind.MISPLACED: places.misplaced,
    MistakeKind.WRONG_SHOT: places.wrong_shot,
    MistakeKind.EXTRA: places.extra,
    MistakeKind.FLASH: places.flash,
    MistakeKind.WORDS: places.words,
    MistakeKind.OUT_OF_STEP: places.out_of_step,
    MistakeKind.TRACKING: controls.tracking,
    MistakeKind.SKEW: controls.skew,
    MistakeKind.RECORDER_TRACKING: controls.recorder,
    MistakeKind.TWO_RECORDERS: controls.recorder,
    MistakeKind.PICTURE_LEVEL: controls.picture_level,
    MistakeKind.SOUND_LEVEL: controls.sound_level,
    MistakeKind.GENERATIONS: places.generations,
}
