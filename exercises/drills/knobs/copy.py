"""The copy that would be made with a control where it stands, by the tape model."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.tape import Fault, Session, faults, read_session, tape_map
from exercises.tape.faults.wording import sentence

MARGIN = 4  # seconds of tape that a map shows on either side of the copy


class Copy:
    """A session document whose last edit is made so: `{"player": {"tracking": 15}}`."""

    def __init__(self, document: Json, making: Mapping[str, Any]) -> None:
        *before, last = document["edits"]
        self.session: Session = read_session({**document, "edits": [*before, {**last, **making}]})
        self.tape = self.session.recorded()
        self.edit = self.session.edits[-1]

    def faults(self) -> list[Fault]:
        """Those that the last edit caused."""
        mine = len(self.session.edits) - 1
        return [fault for fault in faults(self.tape, self.session.bench) if fault.edit == mine]

    def sentences(self) -> list[str]:
        """What is wrong with the copy, each fault once."""
        told = dict.fromkeys(sentence(fault) for fault in self.faults())
        return [f"{each[:1].upper()}{each[1:]}." for each in told]

    def map(self) -> Json:
        bench, second = self.session.bench, self.session.bench.rate.nominal
        start = max(0, self.edit.at - MARGIN * second)
        end = min(self.tape.length, self.edit.end + MARGIN * second)
        marks = {"edit in": self.edit.at, "edit out": self.edit.end}
        return tape_map(self.tape, bench, start=start, end=end, marks=marks).as_json()
