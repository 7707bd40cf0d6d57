"""What the machines made of a recording, where it went wrong; the worst first."""

from collections.abc import Iterator

from exercises.tape.explaining.account import Account
from exercises.tape.judging.stretches import stretches
from exercises.tape.tape import SIDES
from exercises.tape.wording import listed


def mishaps(account: Account) -> Iterator[str]:
    """Each as a sentence; of a tape that somebody has a brief for, only what matters to it."""
    if account.mode == "insert":
        yield from _no_pulses(account)
    else:
        yield from _wiped(account)
    yield from _nothing_to_copy(account)
    yield from _not_locked(account)
    yield from _new_take(account)
    if account.mode == "assemble":
        yield from _pulses_begin_anew(account)
        yield from _old_pulses_go_on(account)


def _no_pulses(account: Account) -> Iterator[str]:
    bare = [each for each in account.bare if account.asked("control", *each)]
    if not bare:
        return
    (start, end), last = bare[0], account.edit.end
    if account.bare != ((start, end),) or end < last or account.tape.control.at(last):
        place = account.span(start, end)
    else:
        place = f"after {account.code(start)}" if start > account.edit.at else "there"
    it = "it" if len(account.sides) == 1 else "they"
    yield (
        f"Insert laid the {listed(account.sides)}, but there are no pulses {place}: "
        f"nothing locks, and {it} can’t be used."
    )


def _wiped(account: Account) -> Iterator[str]:
    start, end = account.wiped
    lost: dict[tuple[int, int], list[str]] = {}
    for side in SIDES:
        for first, last, run in stretches(account.tape.on(side).laid, start, end):
            if run and account.asked(side, first, last):
                lost.setdefault((first, last), []).append(side)
    for (first, last), sides in list(lost.items())[:1]:
        yield (
            f"Past its end assemble wiped {account.long(end - start)} of tape, and with it the "
            f"{listed(sides)} {account.span(first, last)}."
        )


def _nothing_to_copy(account: Account) -> Iterator[str]:
    edit, reached = account.edit, account.edit.in_
    for take in edit.source.takes_in(edit.in_, edit.out):
        if take.start > reached:
            break
        reached = take.end
    if reached >= edit.out:
        return
    following = (take.start for take in edit.source.takes_in(reached, edit.out))
    start, end = reached, min([edit.out, *(at for at in following if at > reached)])
    laid = start + edit.at - edit.in_, end + edit.at - edit.in_
    if any(account.asked(side, *laid) for side in account.sides):
        yield (
            f"{edit.source.name} is blank {account.span(start, end)}, so nothing was laid "
            f"{account.span(*laid)}."
        )


def _not_locked(account: Account) -> Iterator[str]:
    start, frames = account.edit.at, account.unlocked
    if frames and any(account.asked(side, start, start + frames) for side in account.sides):
        short = [
            f"{source or 'the master'} has {account.run_up(run_up)} before {account.code(at)}"
            for source, at, run_up in account.short
        ]
        yield (
            f"The first {account.long(frames)} of it came over before the machines were locked: "
            f"{listed(short)}, and they need {account.long(account.bench.lock)}."
        )


def _new_take(account: Account) -> Iterator[str]:
    edit = account.edit
    for take in account.new_takes:
        at = take.start + edit.at - edit.in_
        rolls = min(at + account.bench.relock, edit.end)
        if any(account.asked(side, at, rolls) for side in account.sides):
            yield (
                f"A new take begins at {account.code(take.start)} on {edit.source.name}, so the "
                f"copy is unsteady {account.span(at, rolls)}."
            )
            return


def _pulses_begin_anew(account: Account) -> Iterator[str]:
    start = account.edit.at
    rolls = min(start + account.bench.relock, account.edit.end)
    if not account.in_phase and start < rolls and account.asked("control", start, rolls):
        yield (
            f"The master has {account.run_up(account.tape.run_up(start))} before "
            f"{account.code(start)}, so the pulses begin anew there, and the picture rolls "
            f"{account.span(start, rolls)}."
        )


def _old_pulses_go_on(account: Account) -> Iterator[str]:
    _, wiped = account.wiped
    old = account.tape.control.at(wiped)
    if old is None or old.start >= wiped:
        return
    rolls = min(wiped + account.bench.relock, old.end)
    if wiped < rolls and account.asked("control", wiped, rolls):
        yield (
            "Behind what assemble wiped the old pulses go on out of phase, and the picture "
            f"rolls {account.span(wiped, rolls)}."
        )
