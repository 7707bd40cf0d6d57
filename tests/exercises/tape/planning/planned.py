"""Plans for the small bench and tapes of the judge's tests."""

from exercises.tape import (
    Assemble,
    Brief,
    Edit,
    Insert,
    Plan,
    Source,
    Tape,
    Wanted,
    judge,
    plan,
    record,
)
from tests.exercises.tape.judging.briefs import BENCH, BLACK, BRIDGE, HARBOUR

SOURCES = {source.name: source for source in (BRIDGE, HARBOUR, BLACK)}

Told = tuple[str, str, int, int, int]


def told(edit: Edit) -> Told:
    """How an edit is made, its source, edit in and out, and where it is laid."""
    how = "assemble"
    if isinstance(edit, Insert):
        how = " and ".join(
            side for side, chosen in (("picture", edit.picture), ("sound", edit.sound)) if chosen
        )
    return how, edit.source.name, edit.in_, edit.out, edit.at


def both(source: str, in_: int, out: int, at: int, tolerance: int = 0) -> tuple[Wanted, Wanted]:
    return (
        Wanted("picture", source, in_, out, at, tolerance),
        Wanted("sound", source, in_, out, at, tolerance),
    )


def brief(*shots: Wanted, **more: object) -> Brief:
    """A brief of shots, whichever their tracks."""
    ordered = sorted(shots, key=lambda shot: shot.at)
    picture, sound = (
        tuple(shot for shot in ordered if shot.track == side) for side in ("picture", "sound")
    )
    return Brief(picture, sound, **more)  # type: ignore[arg-type]


def recordings(asked: Brief, tape: Tape, **sources: Source) -> list[Told]:
    """The plan's recordings, after making them and looking whether they do it."""
    found = plan(asked, tape, sources=sources or SOURCES, bench=BENCH)
    assert isinstance(found, Plan)
    assert found.exact

    made = tape
    for index, edit in enumerate(found.edits):
        made = record(made, edit, BENCH, index)
    judgement = judge(asked, made, before=tape, bench=BENCH, edits=found.edits)
    assert judgement.fulfilled
    assert judgement.economy == found.economy
    return [told(edit) for edit in found.edits]


def why_not(asked: Brief, tape: Tape, **sources: Source) -> tuple[str, ...]:
    found = plan(asked, tape, sources=sources or SOURCES, bench=BENCH)
    assert not isinstance(found, Plan)
    return found.reasons


__all__ = ["Assemble", "both", "brief", "recordings", "told", "why_not"]
