"""The copy that would be made with a control where it stands, by the tape model."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import begun
from exercises.tape import EditSession, Fault, FaultKind, faults, read_edit_session, tape_map
from exercises.tape.faults.wording import sentence

MARGIN = 4  # seconds of tape that a map shows on either side of the copy


def made_so(document: Json, making: Mapping[str, Any]) -> Json:
    """A session document with its edits made so: `{"player": {"tracking": 15}}`.

    What an edit says of itself, it keeps.
    """
    return {**document, "edits": [{**making, **edit} for edit in document["edits"]]}


class Copy:
    """The edit master of a session document, with its edits made so."""

    def __init__(self, document: Json, making: Mapping[str, Any]) -> None:
        self.session: EditSession = read_edit_session(made_so(document, making))
        self.tape = self.session.recorded()

    def faults(self) -> list[Fault]:
        """Those that the edits caused."""
        found = faults(self.tape, self.session.bench)
        return [fault for fault in found if fault.edit is not None]

    def sentences(self) -> list[str]:
        """What is wrong with the copy: of each kind, the worst."""
        worst: dict[FaultKind, Fault] = {}
        for fault in self.faults():
            held = worst.setdefault(fault.kind, fault)
            worst[fault.kind] = max(held, fault, key=lambda each: each.measured.beyond)
        return [f"{begun(sentence(fault))}." for fault in worst.values()]

    def map(self) -> Json:
        first, last = self.session.edits[0], self.session.edits[-1]
        bench, second = self.session.bench, self.session.bench.rate.nominal
        start = max(0, first.at - MARGIN * second)
        end = min(self.tape.length, last.end + MARGIN * second)
        marks = {"edit in": first.at, "edit out": last.end}
        return tape_map(self.tape, bench, start=start, end=end, marks=marks).as_json()
