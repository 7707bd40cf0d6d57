from collections.abc import Mapping
from dataclasses import dataclass

from exercises.tape.bench import Bench
from exercises.tape.edit import Edit
from exercises.tape.judging import Brief, Judgement, Pace, judge
from exercises.tape.planning import NoPlan, Plan, plan
from exercises.tape.playback import PlaybackState, play
from exercises.tape.recording import record
from exercises.tape.source import Source
from exercises.tape.tape import Tape
from exercises.tape.work import spend, working_on

EDIT = 20  # steps of work, whatever it records


@dataclass(frozen=True, slots=True)
class EditSession:
    """A bench, its source tapes, a master as it was, and the edits made on it, in order.

    brief  what the master was to become; ``after`` of the edits were made before it was
           given: it speaks of the master as they left it
    pace   how fast the work at the bench goes; None: the usual pace
    plans  whether the best list of recordings for the brief is asked for
    """

    bench: Bench
    master: Tape
    sources: Mapping[str, Source]
    edits: tuple[Edit, ...]
    brief: Brief | None = None
    after: int = 0
    pace: Pace | None = None
    plans: bool = False

    def recorded(self, count: int | None = None) -> Tape:
        """The master after ``count`` of the edits, or all; each is the cause, by index."""
        tape = self.master
        for index, edit in enumerate(self.edits[:count]):
            with working_on(f"edits[{index}]"):
                spend(EDIT)
                tape = record(tape, edit, self.bench, index)
        return tape

    def judged(self, brief: Brief) -> Judgement:
        """The master after all the edits, by a brief given after the first of them."""
        return judge(
            brief,
            self.recorded(),
            before=self.recorded(self.after),
            bench=self.bench,
            edits=self.edits[self.after :],
            pace=self.pace,
        )

    def planned(self, brief: Brief) -> Plan | NoPlan:
        """The best way to the brief from the master as it was when the brief was given."""
        return plan(
            brief,
            self.recorded(self.after),
            sources=self.sources,
            bench=self.bench,
            pace=self.pace,
            first=self.after,
        )

    def played(self) -> tuple[PlaybackState, ...]:
        return play(self.recorded(), self.bench)
