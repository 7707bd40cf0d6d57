"""What would have kept somebody from a mistake: a rule, with its place in a lesson."""

from collections.abc import Mapping, Sequence

from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.tape import Assemble, FaultKind
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.tone import tone_off

ALL_OF_IT = Rule(
    text="Go along the whole edit master with the brief in hand before you leave it.",
    skill="planning-and-time-code",
    lesson="finishing",
    section="check-it",
)
GIVE_AN_OUT = Rule(
    text="Give an insert its edit out: it records over what is there until it is told to stop.",
    skill="replacing-inside-it",
    lesson="making-an-edit",
    section="record",
)
MARK_TO_THE_FRAME = Rule(
    text="Mark to the frame, and read both marks against the paper edit before you rehearse.",
    skill="planning-and-time-code",
    lesson="making-an-edit",
    section="mark",
)
SEE_IT_FIRST = Rule(
    text="Rehearse: what you see run through is what the edit will lay.",
    skill="seeing-a-bad-edit",
    lesson="making-an-edit",
    section="rehearse",
)
READ_WHAT_YOU_SEE = Rule(
    text="A rehearsal shows what the edit will lay: compare it with the brief before you record.",
    skill="seeing-a-bad-edit",
    lesson="making-an-edit",
    section="rehearse",
)

PREVENTIONS: Mapping[MistakeKind, Rule] = {
    MistakeKind.NOT_LAID: ALL_OF_IT,
    MistakeKind.TRACK_LEFT: rules.PREPARED,
    MistakeKind.WIPED: rules.ENDS,
    MistakeKind.RECORDED_OVER: GIVE_AN_OUT,
    MistakeKind.NO_PULSES: rules.NO_PULSES,
    MistakeKind.HOLE: rules.NO_GAP,
    MistakeKind.SOURCE_RUN_UP: rules.ROOM_FOR_RUN_UP,
    MistakeKind.MASTER_RUN_UP: rules.RUN_UP,
    MistakeKind.NEW_TAKE: rules.ONE_TAKE,
    MistakeKind.CUT_SHORT: MARK_TO_THE_FRAME,
    MistakeKind.BLANK_SOURCE: rules.ONE_TAKE,
    MistakeKind.MISPLACED: MARK_TO_THE_FRAME,
    MistakeKind.WRONG_SHOT: SEE_IT_FIRST,
    MistakeKind.EXTRA: rules.OUT_LESS_IN,
    MistakeKind.FLASH: rules.NO_FLASH,
    MistakeKind.WORDS: rules.WHOLE_WORDS,
    MistakeKind.OUT_OF_STEP: rules.IN_STEP,
    MistakeKind.TRACKING: rules.SET_UP_FIRST,
    MistakeKind.SKEW: rules.STRAIGHT,
    MistakeKind.RECORDER_TRACKING: rules.FIXED_POSITION,
    MistakeKind.TWO_RECORDERS: rules.ONE_RECORDER,
    MistakeKind.PICTURE_LEVEL: rules.WHITE_LEVEL,
    MistakeKind.SOUND_LEVEL: rules.SPEECH_BY_HAND,
    MistakeKind.GENERATIONS: rules.GENERATIONS_ADD,
}

OF_FAULT: Mapping[str, Rule] = {
    FaultKind.STRAY_BREATH: rules.NO_BREATH,
    FaultKind.SOUND_LEVEL_JUMP: rules.SOUND_ALIKE,
    FaultKind.NOISY_PAUSES: rules.QUIET_PAUSES,
    FaultKind.PRESSED_SOUND: rules.LIMITER,
}


def prevention(
    kind: MistakeKind, made: Sequence[EditMade], parts: Sequence[Finding], run: Proceedings
) -> Rule:
    if kind is MistakeKind.RECORDED_OVER and made:
        return _of_recorded_over(made[0], parts)
    if kind is MistakeKind.TRACKING and made and _set_for_it(made[0], run):
        return rules.DRIFTS
    if kind is MistakeKind.SOUND_LEVEL and any(map(tone_off, made)):
        return rules.LINE_UP
    if PREVENTIONS[kind] is SEE_IT_FIRST and made and all(map(run.rehearsed, made)):
        return READ_WHAT_YOU_SEE
    heard = kind in (MistakeKind.WORDS, MistakeKind.SOUND_LEVEL)
    if heard and all(part.kind in OF_FAULT for part in parts):
        return OF_FAULT[parts[0].kind]
    return PREVENTIONS[kind]


def _of_recorded_over(made: EditMade, parts: Sequence[Finding]) -> Rule:
    if one_track(parts) and len(made.account.sides) > 1:
        return rules.ONE_TRACK
    return MARK_TO_THE_FRAME if isinstance(made.edit, Assemble) else GIVE_AN_OUT


def one_track(parts: Sequence[Finding]) -> bool:
    """Whether picture alone, or sound alone, should have stayed; whatever became of the pulses."""
    return len({part.track for part in parts} - {"control"}) == 1


def _set_for_it(made: EditMade, run: Proceedings) -> bool:
    """Whether tracking was turned for this tape, so that it moved away afterwards."""
    return any(step.name == "tracking" for step in run.since_loaded(made))
