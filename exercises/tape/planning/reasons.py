"""Why a plan makes a recording as it does, from the tape that it finds."""

from collections.abc import Iterator

from exercises.tape.edit import Assemble, Edit
from exercises.tape.explaining.account import Account
from exercises.tape.planning.recordings import of_strand
from exercises.tape.planning.target import Target, WantedPart
from exercises.tape.tape import Tape
from exercises.tape.wording import listed


def reason(target: Target, tape: Tape, edit: Edit) -> str:
    """One sentence, or two where the recording reaches further than its shot."""
    account = Account(tape, edit, target.bench)
    parts = [part for part in target.parts if _lays(account, part)]
    if parts:
        return " ".join((_mode(account), *_reach(account, parts)))
    if isinstance(edit, Assemble):
        return _run_up(account)
    return f"Black covers the {listed(account.sides)} that was laid before its time."


def _lays(account: Account, part: WantedPart) -> bool:
    edit = account.edit
    inside = part.start < edit.end and edit.at < part.end
    return inside and part.strand == of_strand(edit) and part.side in account.sides


def _mode(account: Account) -> str:
    if account.mode == "insert":
        left = f", and the {account.left[0]} stays as it is" if account.left else ""
        return f"There are pulses already, so insert lays the {listed(account.sides)}{left}."
    phase = "in phase with those before" if account.in_phase else "in a phase of their own"
    if account.bare:
        from_ = account.code(account.bare[0][0])
        return f"There are no pulses from {from_} on: assemble lays them, {phase}."
    return f"Assemble lays picture, sound and new pulses, {phase}."


def _reach(account: Account, parts: list[WantedPart]) -> Iterator[str]:
    """Where the recording begins before its shot, or runs on under others."""
    edit, start = account.edit, min(part.start for part in parts)
    if edit.at < start:
        yield (
            f"It begins {account.long(start - edit.at)} before the shot, so that both machines "
            "are locked by then; what it lays there is recorded over."
        )
    if any(_gaps(side, parts, start, edit.end) for side in {part.side for part in parts}):
        yield "It runs on under what is recorded over it later."


def _gaps(side: str, parts: list[WantedPart], start: int, end: int) -> bool:
    laid = sum(part.end - part.start for part in parts if part.side == side)
    return laid < end - start


def _run_up(account: Account) -> str:
    at, end = account.edit.at, account.edit.end
    has = account.run_up(account.tape.run_up(end))
    return (
        f"The master has {has} before {account.code(end)}, and the machines need "
        f"{account.long(account.bench.lock)}: black {account.span(at, end)} lays its pulses."
    )
