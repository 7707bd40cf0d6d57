"""The mistakes of a finished master, each put together from all that shows it."""

from collections.abc import Sequence
from dataclasses import dataclass
from operator import attrgetter

from exercises.drills.asks import Json
from exercises.drills.judging.rules import Rule
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.blame import Blame
from exercises.worktop.debrief.mistakes.blaming import blame_of
from exercises.worktop.debrief.mistakes.causes import cause
from exercises.worktop.debrief.mistakes.finding import Finding, findings
from exercises.worktop.debrief.mistakes.joining import joined
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.mistakes.prevention import prevention
from exercises.worktop.debrief.mistakes.telling import wrong
from exercises.worktop.debrief.proceedings import Proceedings


@dataclass(frozen=True, slots=True)
class Mistake:
    """`made` are the learner's edits that it comes from; none where it was so before them."""

    kind: MistakeKind
    made: tuple[EditMade, ...]
    parts: tuple[Finding, ...]

    @property
    def start(self) -> int:
        return self.parts[0].start

    @property
    def end(self) -> int:
        return max(part.end for part in self.parts)

    def place(self, run: Proceedings) -> Json:
        """From where its first part begins to where its last one ends."""
        first, last = self.parts[0], max(self.parts, key=attrgetter("end"))
        ends = {name: last.place(run)[name] for name in ("end", "ends")}
        return {**first.place(run), **ends}

    @property
    def line(self) -> str:
        """The line of the rubric that it is first told under."""
        return "programme" if self.programme else "faults"

    @property
    def programme(self) -> bool:
        """Whether something differs from the brief, and not only plays badly."""
        return any(part.sort == "difference" for part in self.parts)

    def prevention(self, run: Proceedings) -> Rule:
        return prevention(self.kind, self.made, self.parts, run)

    def as_json(self, run: Proceedings) -> Json:
        return {
            "kind": self.kind,
            "edits": [each.number for each in self.made],
            "step": self.made[0].step.number if self.made else None,
            **self.place(run),
            "tracks": list(dict.fromkeys(part.track for part in self.parts)),
            "wrong": wrong(self.kind, self.parts, yours=bool(self.made)),
            "cause": cause(self.kind, self.made, self.parts, run),
            "prevented": self.prevention(run).at(run.bench),
            "parts": [part.as_json(run) for part in self.parts],
        }


def mistakes(run: Proceedings) -> tuple[Mistake, ...]:
    """In order along the tape."""
    found = sorted(findings(run), key=attrgetter("start", "end"))
    each = joined([(one, blame_of(one, run)) for one in found], run)
    return tuple(sorted((_mistake(group) for group in each), key=attrgetter("start", "end")))


def _mistake(group: Sequence[tuple[Finding, Blame]]) -> Mistake:
    made = {blame.made for _, blame in group if blame.made}
    kind = group[0][1].kind
    return Mistake(
        kind,
        tuple(sorted(made, key=attrgetter("number"))),
        tuple(found for found, _ in group),
    )
