"""Where a recording misses what the brief wants; the worst first."""

from collections.abc import Iterator

from exercises.tape.explaining.account import MARK, Account
from exercises.tape.faults.wording import sentence
from exercises.tape.judging.difference import Difference, DifferenceKind
from exercises.tape.wording import listed

TOLD = {"picture": "picture", "sound": "sound", "control": "pulses"}


def misses(account: Account) -> Iterator[str]:
    """Each as a sentence, of this recording's own doing."""
    yield from _recorded_over(account)
    yield from _not_recorded(account)
    for each in account.judgement.differences:
        if each.edit == MARK:
            yield from _differs(account, each)
    for fault in account.judgement.faults:
        if fault.edit == MARK:
            where = account.span(fault.start, fault.end)
            yield f"On the {fault.track} track, {where}: {sentence(fault)}."


def _recorded_over(account: Account) -> Iterator[str]:
    touched = [
        each
        for each in account.judgement.differences
        if each.kind is DifferenceKind.TOUCHED and each.edit == MARK
    ]
    if touched:
        tracks = listed(list(dict.fromkeys(TOLD[each.track] for each in touched)))
        who = "Assemble records all three tracks: it" if account.mode == "assemble" else "Insert"
        where = account.span(touched[0].start, touched[0].end)
        yield f"{who} recorded over the {tracks} that had to stay, {where}."


def _not_recorded(account: Account) -> Iterator[str]:
    """What is wanted on a track that the recording left alone."""
    for each in account.judgement.differences:
        reached = each.start < account.edit.end and account.edit.at < each.end
        if reached and each.shot is not None and each.track in account.left:
            where = account.span(each.start, each.end)
            yield (
                f"Insert left the {each.track} as it was, and a new {each.track} is wanted {where}."
            )
            return


def _differs(account: Account, each: Difference) -> Iterator[str]:
    where = account.span(each.start, each.end)
    match each.kind:
        case DifferenceKind.EARLY | DifferenceKind.LATE:
            frames = account.long(each.by or 0)
            yield f"The {each.track} lies {frames} too {each.kind.value}, {where}."
        case DifferenceKind.WRONG_SHOT | DifferenceKind.WRONG_SOUND:
            yield f"It laid another {each.track} than is wanted, {where}."
        case DifferenceKind.EXTRA:
            yield f"It laid {each.track} {where}, where none is wanted."
        case DifferenceKind.GENERATION:
            yield f"Its {each.track} is {each.by} generation too many, {where}."
