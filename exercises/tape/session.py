from collections.abc import Mapping
from dataclasses import dataclass

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit
from exercises.tape.playback import State, play
from exercises.tape.recording import record
from exercises.tape.source import Source
from exercises.tape.tape import Tape


@dataclass(frozen=True, slots=True)
class Session:
    """A bench, its source tapes, a master as it was, and the edits made on it, in order."""

    bench: Bench
    master: Tape
    sources: Mapping[str, Source]
    edits: tuple[Edit, ...]

    def recorded(self) -> Tape:
        """The master after all the edits; each is the cause, by index, of what it did."""
        tape = self.master
        for index, edit in enumerate(self.edits):
            tape = record(tape, edit, self.bench, index)
        return tape

    def played(self) -> tuple[State, ...]:
        return play(self.recorded(), self.bench)
