"""What belongs together of all that was found: one mistake shows in many ways."""

from collections.abc import Hashable, Iterable, Iterator, Sequence

from exercises.worktop.debrief.mistakes.blame import Blame
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import JUMPS, MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.tone import tone_off

Found = tuple[Finding, Blame]

# Of one edit, the first shows what the second is.
SHOWS = (
    (MistakeKind.RECORDED_OVER, MistakeKind.MISPLACED),
    (MistakeKind.FLASH, MistakeKind.MISPLACED),
    (MistakeKind.MISPLACED, MistakeKind.HOLE),
    (MistakeKind.FLASH, MistakeKind.HOLE),
)

# The control that a mistake is of. Left where it is, it spoils one edit after another.
CONTROL_OF = {
    MistakeKind.TRACKING: "tracking",
    MistakeKind.SKEW: "skew",
    MistakeKind.RECORDER_TRACKING: "recorder-tracking",
    MistakeKind.PICTURE_LEVEL: "picture-level",
    MistakeKind.SOUND_LEVEL: "sound-level",
}


def joined(found: Sequence[Found], run: Proceedings) -> Iterator[list[Found]]:
    """Groups of one mistake each; what no edit did belongs together where it touches."""
    groups: dict[Hashable, list[list[Found]]] = {}
    for each, blame in _shown(_matched(found, run)):
        held = groups.setdefault(_origin(blame, run), [])
        if held and (blame.made or each.start <= max(one.end for one, _ in held[-1])):
            held[-1].append((each, blame))
        else:
            held.append([(each, blame)])
    for held in groups.values():
        yield from held


def _matched(found: Sequence[Found], run: Proceedings) -> list[Found]:
    """A level that jumps at a cut is the fault of the side that is wrong by itself as well."""
    bad = {blame for each, blame in found if each.sort == "fault" and each.kind not in JUMPS}
    settled = []
    for each, blame in found:
        other = _before_cut(each, blame, run)
        is_other = blame not in bad and (other in bad or _untrue(each, other))
        settled.append((each, other if is_other else blame))
    return settled


def _untrue(found: Finding, blame: Blame) -> bool:
    """Whether what jumps is the sound behind tone that does not lie at line-up."""
    return found.track == "sound" and blame.made is not None and tone_off(blame.made) != 0


def _before_cut(found: Finding, blame: Blame, run: Proceedings) -> Blame:
    if found.kind not in JUMPS or found.track == "control":
        return blame
    beside = run.top.master.on(found.track).cause(found.start - 1)
    return blame._replace(made=run.by_index.get(beside))


def _shown(found: Sequence[Found]) -> Iterable[Found]:
    blames = {blame for _, blame in found}
    for each, blame in found:
        for shows, kind in SHOWS:
            if blame.kind is shows and blame.made and blame._replace(kind=kind) in blames:
                blame = blame._replace(kind=kind)
        yield each, blame


def _origin(blame: Blame, run: Proceedings) -> Hashable:
    """What makes two findings one mistake: the edit, where a control was left, or how late it is.

    Whoever takes one mark wrong, and every next one from there, is late by as much each time.
    """
    if blame.made and blame.kind is MistakeKind.MISPLACED:
        return blame.kind, run.lateness(blame.made)
    if blame.made is None or blame.kind not in CONTROL_OF:
        return blame
    turned = run.turned(blame.made, CONTROL_OF[blame.kind])
    tape = None if blame.kind is MistakeKind.RECORDER_TRACKING else blame.made.edit.source.name
    return blame.kind, tape, turned
