"""What a kind of drill is: how a question is made, what is asked, how an answer is judged.

Everything here is pure: no request, no database. Questions and verdicts turn into
JSON-able dicts, because they are stored with the attempt and never made again.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Self

from exercises.drills.asks import Json
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.settings import USUAL, Meter, Settings
from exercises.drills.telling import Near, Telling, exactly
from exercises.mastery.misconceptions import MISCONCEPTIONS

MOST_DRAWN = 1000  # candidates of one seed; of a kind that is asked, a dozen are many


def slug_of(name: str) -> str:
    """What a module's kind, or what a function makes, is called where it is kept and counted.

    >>> slug_of("exercises.drills.kinds.set_skew"), slug_of("late_assemble")
    ('set-skew', 'late-assemble')
    """
    return name.rpartition(".")[2].replace("_", "-")


@dataclass(frozen=True, kw_only=True)
class Verdict:
    """How an answer was judged: `score` in hundredths, 100 when right.

    `misconceptions` are ids of `exercises.mastery`; `feedback` is what the kind's
    template shows once the answer is in. While it is `pending`, an instructor has to judge it.
    """

    right: bool
    score: int
    misconceptions: tuple[str, ...] = ()
    pending: bool = False
    feedback: Json = field(default_factory=dict)

    @classmethod
    def waiting(cls, **feedback: Any) -> Self:
        """No judgement: an instructor has to make it."""
        return cls(right=False, score=0, pending=True, feedback=feedback)

    def as_told(self) -> Self:
        """As it is kept and shown: what its misconceptions say to a learner is in the feedback."""
        beliefs = [MISCONCEPTIONS[belief].learner for belief in self.misconceptions]
        return replace(self, feedback={"beliefs": beliefs, **self.feedback})


@dataclass(frozen=True, kw_only=True)
class Kind:
    """An entry of the register.

    Raise `revision` when the same seed would give another question or verdict. `skills`
    are those that its questions practise. `template` is the page's middle: it defines the
    partials `question` and `feedback`.
    `needs` are meters that its questions can't do without. `near` says which answers come to
    the same, where that is not what is typed exactly.

    `candidate` draws a question at a bench; None where that has not one right answer, or two
    beliefs would answer alike. Then it is asked for the next.
    `tells_bench`: its question says which bench it is about, whoever is asked.
    `by_hand`: an instructor reads the answers; until then they are neither right nor wrong.
    `own`: the key of the revision that it is made of, where an instructor wrote it.
    """

    slug: str
    title: str
    purpose: str
    skills: tuple[str, ...]
    lesson: str
    revision: int
    template: str
    candidate: Callable[[Draw, Settings], Question | None]
    grade: Callable[[Question, Mapping[str, Any]], Verdict]
    by_hand: bool = False
    tells_bench: bool = False
    needs: frozenset[Meter] = frozenset()
    near: Near = exactly
    own: int | None = None

    def is_at(self, settings: Settings) -> bool:
        """Whether a bench has the meters that the questions are read from."""
        return self.needs <= settings.meters

    def tells(self, question: Question) -> Telling:
        """What one of its questions can tell of whoever answers it."""
        return Telling(question, self.near)

    def candidates(self, seed: int, settings: Settings = USUAL) -> Iterator[Question | None]:
        """What the seed draws at a bench with these settings, one after the other."""
        draw = Draw(seed)
        return (self.candidate(draw, settings) for _ in range(MOST_DRAWN))

    def make(self, seed: int, settings: Settings = USUAL) -> Question:
        """The first question that the seed draws, at a bench with these settings.

        Where somebody has set them, the question keeps them. LookupError where none can be asked.
        """
        made = next(filter(None, self.candidates(seed, settings)), None)
        if made is None:
            raise LookupError(f"{self.slug} makes no question at this bench of seed {seed}.")
        if settings.either_rate or self.tells_bench:
            return made
        return replace(made, bench={"settings": settings.as_json(), "figures": settings.in_words})
