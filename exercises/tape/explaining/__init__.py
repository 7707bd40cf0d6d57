"""Why a recording is right or wrong, in one sentence of the tape model's own facts."""

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit
from exercises.tape.explaining.account import Account, ShortRunUp
from exercises.tape.explaining.harms import Harm, harms
from exercises.tape.explaining.machines import mishaps
from exercises.tape.explaining.wishes import misses
from exercises.tape.judging import Brief
from exercises.tape.recording import refuse_misfit
from exercises.tape.tape import Tape
from exercises.tape.wording import listed

__all__ = ["Account", "Harm", "ShortRunUp", "explain", "harms"]


def explain(tape: Tape, edit: Edit, bench: Bench, brief: Brief | None = None) -> str:
    """What comes of the edit on this tape: the worst of it, or how it is right.

    With a brief only what matters to it counts, and what it wants as well; the tape as it
    was is what it speaks of. Raises EditRefused for an edit that does not fit the tape.
    """
    refuse_misfit(tape, edit)
    account = Account(tape, edit, bench, brief)
    for sentence in mishaps(account):
        return sentence
    for sentence in misses(account) if brief else ():
        return sentence
    return _right(account)


def _right(account: Account) -> str:
    where = account.span(account.edit.at, account.edit.end)
    if account.mode == "assemble":
        phase = "in phase with those before" if account.in_phase else "in a phase of their own"
        return f"Assemble laid picture and sound {where}, and pulses that run on {phase}."
    left = listed([*account.left, "pulses"])
    are = "as they were" if account.left or left == "pulses" else "as it was"
    return (
        f"Insert laid the {listed(account.sides)} {where} over pulses that were there already, "
        f"and left the {left} {are}."
    )
