"""Drills that an instructor writes: what was written becomes a kind with one question."""

from exercises.drills.own.as_kind import FORMS, Form, own_kind
from exercises.drills.own.bad_edit import DrawnEdits
from exercises.drills.own.bad_edit import drawn as drawn_edits
from exercises.drills.own.described import Described
from exercises.drills.own.made import DescribedEdits, Made
from exercises.drills.own.master import OnMaster, Recorded
from exercises.drills.own.mode import Drawn, drawn
from exercises.drills.own.pictured import PictureTask
from exercises.drills.own.written import WrittenTask

__all__ = [
    "FORMS",
    "Described",
    "DescribedEdits",
    "Drawn",
    "DrawnEdits",
    "Form",
    "Made",
    "OnMaster",
    "PictureTask",
    "Recorded",
    "WrittenTask",
    "drawn",
    "drawn_edits",
    "own_kind",
]
