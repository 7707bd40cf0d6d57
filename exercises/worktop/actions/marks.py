"""Marking where an edit begins and ends."""

from dataclasses import replace

from exercises.drills.setting.phrases import code
from exercises.worktop.actions.transport import end_of, threaded
from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.worktop import EditMarks, Worktop

MARKS = {
    "source_in": ("player", "Source in"),
    "source_out": ("player", "Source out"),
    "master_in": ("recorder", "Master in"),
}


def mark(top: Worktop, *, which: str, at: int | None = None) -> Done:
    """Where the machine stands, or at a frame that was typed."""
    machine, title = known(which)
    name = threaded(top, machine)
    here = top.player.at if machine == "player" else top.recorder.at
    frame = here if at is None else at
    if not 0 <= frame <= end_of(top, name):
        raise BenchRefused(f"{name} ends at {code(end_of(top, name), top.set_up.bench)}.")
    marks = replace(top.marks, **{which: frame})
    refuse_backwards(marks, top)
    marked = replace(top, marks=marks, rehearsed=False)
    return Done(marked, f"{title} is {code(frame, top.set_up.bench)}.")


def unmark(top: Worktop, *, which: str) -> Done:
    _, title = known(which)
    if getattr(top.marks, which) is None:
        raise BenchRefused(f"{title} is not marked.")
    return Done(replace(top, marks=replace(top.marks, **{which: None})), f"{title} is taken off.")


def known(which: str) -> tuple[str, str]:
    if which not in MARKS:
        raise BenchRefused("An edit has three marks: source in, source out, master in.")
    return MARKS[which]


def refuse_backwards(marks: EditMarks, top: Worktop) -> None:
    first, out = marks.source_in, marks.source_out
    if first is not None and out is not None and out <= first:
        at = code(first, top.set_up.bench)
        raise BenchRefused(f"Source out must come after source in, which is {at}.")
