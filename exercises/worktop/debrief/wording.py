"""Edits, steps and places in words."""

from collections.abc import Sequence

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code, listed, span
from exercises.tape import Bench, Edit, Insert
from exercises.worktop.debrief.made import EditMade


def tracks_of(edit: Edit) -> list[str]:
    if isinstance(edit, Insert):
        return [side for side in ("picture", "sound") if getattr(edit, side)]
    return ["picture", "sound"]


def manner(edit: Edit) -> str:
    """`assemble`, or `insert of the sound alone`."""
    if not isinstance(edit, Insert):
        return "assemble"
    tracks = tracks_of(edit)
    return f"insert of the {tracks[0]} alone" if len(tracks) == 1 else "insert of picture and sound"


def named(made: EditMade, bench: Bench) -> str:
    """`Edit 2, an assemble from 00:00:48:00 to 00:00:58:00`."""
    place = span(made.edit.at, made.edit.end, bench)
    return f"Edit {made.number}, an {manner(made.edit)} {place}"


def steps_of(numbers: Sequence[int]) -> str:
    """`step 4`, `steps 4 and 9`, or with many `steps 4, 9, 12 and 3 more`."""
    told = [str(number) for number in numbers]
    if len(told) > 5:
        told = [*told[:4], f"{len(told) - 4} more"]
    return f"step{'s' if len(numbers) > 1 else ''} {listed(told)}"


def edits_of(made: Sequence[EditMade]) -> str:
    """`edit 2 (step 14)`, `edit 2 (step 14) and edit 3 (step 20)`."""
    told = [f"edit {each.number} (step {each.step.number})" for each in made]
    if len(told) > 5:
        told = [*told[:4], f"{len(told) - 4} more"]
    return listed(told)


def recording(edit: Edit, bench: Bench) -> Json:
    """An edit as a page shows it: places in frames and in time code."""
    return {
        "mode": "insert" if isinstance(edit, Insert) else "assemble",
        "tracks": tracks_of(edit),
        "made": manner(edit),
        "source": edit.source.name,
        "in": edit.in_,
        "out": edit.out,
        "at": edit.at,
        "end": edit.end,
        "in_at": code(edit.in_, bench),
        "out_at": code(edit.out, bench),
        "starts": code(edit.at, bench),
        "ends": code(edit.end, bench),
    }


def place(start: int, end: int, bench: Bench) -> Json:
    ends = {"starts": code(start, bench), "ends": code(end, bench)}
    return {"start": start, "end": end, **ends}
