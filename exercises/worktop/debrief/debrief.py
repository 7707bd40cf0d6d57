"""The debrief of a practical, worked out from what was done at the bench."""

from dataclasses import asdict, dataclass

from exercises.drills.asks import Json
from exercises.tape import Match
from exercises.tape.planning import NoPlan
from exercises.worktop.debrief.beliefs import beliefs
from exercises.worktop.debrief.beside import beside
from exercises.worktop.debrief.drawn import drawn
from exercises.worktop.debrief.mistakes import mistakes
from exercises.worktop.debrief.proceedings import Actions, Proceedings
from exercises.worktop.debrief.rubric import rubric
from exercises.worktop.debrief.rubric.economy import spent
from exercises.worktop.debrief.score import SCORING, practise, score
from exercises.worktop.debrief.wording import place
from exercises.worktop.set_up import SetUp


@dataclass(frozen=True, slots=True, kw_only=True)
class Debrief:
    """Plain values, to be kept with the run and shown as they are.

    An edit is told by the learner's own number, a step by that of its action, both from 1 on;
    places are in frames (`start`, `end`) and in time code (`starts`, `ends`), those of mistakes as
    the edit sheet has them.

    right      the programme is right and has no faults
    score      in hundredths, by `scoring`
    matches    what of the brief is there
    mistakes   each once: what is `wrong`, its `cause`, what would have `prevented` it, and its
               `parts`: every difference, unclean state and fault that shows it
    map        the master as `TapeMap.from_json` reads it
    rows       the plan's recordings beside the learner's edits; `no_plan` says why there are none
    rubric     lines with `name`, `got` (None where it did not come up) and `evidence`
    economy    edits and minutes: made, planned, allowed
    practise   one thing to practise, or None
    beliefs    ids of misconceptions that the mistakes point at
    """

    right: bool
    score: int
    scoring: str
    matches: list[Json]
    mistakes: list[Json]
    map: Json
    rows: list[Json]
    no_plan: list[str]
    rubric: list[Json]
    economy: Json
    practise: Json | None
    beliefs: list[str]

    def as_json(self) -> Json:
        return {name: getattr(self, name) for name in self.__slots__}

    @classmethod
    def from_json(cls, kept: Json) -> "Debrief":
        return cls(**kept)


def debrief(set_up: SetUp, actions: Actions) -> Debrief:
    """`actions` are those that were done, in order.

    Raises BenchRefused for one that can't be done.
    """
    run = Proceedings.of(set_up, actions)
    found = mistakes(run)
    lines = rubric(run, found)
    return Debrief(
        right=run.judgement.fulfilled,
        score=score(lines),
        scoring=SCORING,
        matches=[_match(each, run) for each in run.judgement.matches],
        mistakes=[each.as_json(run) for each in found],
        map=drawn(run).as_json(),
        rows=list(beside(run)),
        no_plan=list(run.plan.reasons) if isinstance(run.plan, NoPlan) else [],
        rubric=[line.as_json() for line in lines],
        economy=spent(run).as_json(),
        practise=practise(lines, found, run),
        beliefs=list(beliefs(found, run)),
    )


def _match(match: Match, run: Proceedings) -> Json:
    ranged = place(match.start, match.end, run.bench)
    return {**asdict(match), **ranged}
