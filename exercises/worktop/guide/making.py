"""The edit itself: mode and marks."""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code
from exercises.tape import Assemble, Edit, Planned
from exercises.tape.to_json import plain_edit
from exercises.worktop.guide.step import GuidedStep
from exercises.worktop.practical import BLACK
from exercises.worktop.worktop import Worktop

MODE = ("mode", "picture", "sound")
TITLES = {"source_in": "Source in", "source_out": "Source out", "master_in": "Master in"}


WHY_MARKS = {
    "source_in": "The first frame of the shot that is to be seen.",
    "source_out": "The first frame that is not wanted any more.",
    "master_in": "Where the shot begins on the edit master.",
}
WHY_MARKS_OF_BLACK = {
    "source_in": "Black looks alike all along: it only needs a run-up of it before this.",
    "source_out": "So much black is needed, and no more.",
    "master_in": "Where the black begins on the edit master.",
}
FROM_THE_BEGINNING = (
    "There are no pulses yet: assemble lays them from the beginning of the tape, and black with "
    "them, for a run-up to what follows."
)


def is_black(top: Worktop, edit: Edit) -> bool:
    take = top.set_up.by_name[edit.source.name].take_at(edit.in_)
    return take is not None and take.shows == BLACK


def reason(top: Worktop, planned: Planned) -> str:
    """The plan's own; black at the beginning of a tape has no shot behind it to be there for."""
    edit = planned.edit
    blank = not top.master.control.laid
    begins = blank and edit.at == 0 and isinstance(edit, Assemble) and is_black(top, edit)
    return FROM_THE_BEGINNING if begins else planned.reason


def mode(top: Worktop, planned: Planned) -> Iterator[GuidedStep]:
    wanted = {name: value for name, value in plain_edit(planned.edit).items() if name in MODE}
    recorder = top.recorder
    stands: Json = {"mode": recorder.mode}
    if recorder.mode == "insert":
        stands |= {"picture": recorder.picture, "sound": recorder.sound}
    if stands != wanted:
        tracks = [side for side in ("picture", "sound") if wanted.get(side)]
        named = f"{wanted['mode']}{', ' if tracks else ''}{' and '.join(tracks)}"
        yield GuidedStep(
            name="mode",
            arguments=wanted,
            what=f"Set the recorder to {named}.",
            why=reason(top, planned),
            how="Recorder, Mode.",
        )


def marks(top: Worktop, planned: Planned) -> Iterator[GuidedStep]:
    edit, bench = planned.edit, top.set_up.bench
    why = WHY_MARKS_OF_BLACK if is_black(top, edit) else WHY_MARKS
    if top.marks.source_out not in (None, edit.out):
        yield GuidedStep(
            name="unmark",
            arguments={"which": "source_out"},
            what="Take the old source out off.",
            why="It belongs to another shot.",
            how="Edit, Source out: Take off.",
        )
    wanted = {"source_in": edit.in_, "source_out": edit.out, "master_in": edit.at}
    for which, frame in wanted.items():
        if getattr(top.marks, which) != frame:
            yield GuidedStep(
                name="mark",
                arguments={"which": which, "at": frame},
                what=f"Mark {TITLES[which].lower()} at {code(frame, bench)}.",
                why=why[which],
                how=f"Edit, {TITLES[which]}: type the time, then Mark.",
            )
