"""What is wrong with the tape, in one sentence a mistake."""

from collections.abc import Mapping, Sequence

from exercises.drills.setting.phrases import listed
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import JUMPS, OF_DIFFERENCE, OF_FAULT, MistakeKind

# {tracks} with the verb {are}; what isn't here is told by the worst that was found of it.
TOLD: Mapping[MistakeKind, str] = {
    MistakeKind.NOT_LAID: "What the brief wants there is not on the tape.",
    MistakeKind.TRACK_LEFT: "The {tracks} there {are} not what the brief wants.",
    MistakeKind.WIPED: "The tape was wiped where something was recorded, and the pulses jump.",
    MistakeKind.RECORDED_OVER: "The {tracks} there {were} recorded over.",
    MistakeKind.NO_PULSES: "What was recorded there has no pulses under it: nothing locks, and it "
    "can’t be used.",
    MistakeKind.HOLE: "There is a hole without pulses before the edit, and what follows it is "
    "unsteady.",
    MistakeKind.SOURCE_RUN_UP: "It was copied before the player had locked: the copy is unsteady.",
    MistakeKind.MASTER_RUN_UP: "It was recorded before the recorder had locked: the start is "
    "unsteady.",
    MistakeKind.NEW_TAKE: "The player met the beginning of another take: the copy is unsteady.",
    MistakeKind.CUT_SHORT: "A part of the shot is missing at its edge.",
    MistakeKind.BLANK_SOURCE: "Nothing was copied there.",
}

NAMES = {"picture": "picture", "sound": "sound", "control": "pulses"}


def wrong(kind: MistakeKind, parts: Sequence[Finding], *, yours: bool) -> str:
    """What was so before the learner sat down is told as it was found."""
    if not yours and kind is not MistakeKind.NOT_LAID:
        return speaking(kind, parts).told
    tracks = {part.track for part in parts}
    names = [name for track, name in NAMES.items() if track in tracks]
    many = len(names) > 1 or names == ["pulses"]
    verbs = {"are": "are", "were": "were"} if many else {"are": "is", "were": "was"}
    return TOLD.get(kind, speaking(kind, parts).told).format(tracks=listed(names), **verbs)


def speaking(kind: MistakeKind, parts: Sequence[Finding]) -> Finding:
    """The part that says most of it: none that it only shows in, and a jump last of all."""
    own = [
        part for part in parts if kind in (OF_FAULT.get(part.kind), OF_DIFFERENCE.get(part.kind))
    ]
    return min(own or parts, key=lambda part: part.kind in JUMPS)
