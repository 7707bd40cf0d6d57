"""A question about a control, from what each of its positions shows and does."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from exercises.drills.asks import Choice, Json
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.control import dial
from exercises.drills.media.medium import Medium, media
from exercises.drills.question import Question

Reveals = Mapping[str, list[str]]


@dataclass(frozen=True, kw_only=True)
class Knob:
    """What is to be known of a control.

    session   the document whose last edits are made with it
    makings   for each position, how they are made then
    units     for each position, how it stands in the model's own units
    why       what tells the best position, as a sentence after it
    passes    what to say of a copy that has no fault, though the control is off
    lures     positions that a belief leads to
    choices   what else is asked; `right` and `reveals` are about these
    """

    name: str
    control: str
    legend: str
    start: int
    best: int
    aim: Aim
    session: Json
    makings: Sequence[Json]
    units: Sequence[str]
    why: str
    passes: str
    rule: Rule
    shown: tuple[Medium, ...]
    lures: Reveals
    face: str = ""
    readings: Sequence[int] = ()
    meter: Sequence[str] = ()
    choices: tuple[Choice, ...] = ()
    right: Mapping[str, str] | None = None
    reveals: Mapping[str, Reveals] | None = None

    def question(
        self, situation: str, *, story: str, task: str, facts: Sequence[Sequence[str]]
    ) -> Question:
        return Question(
            situation=situation,
            skill=self.rule.skill,
            asks=(*self.choices, dial(self.name, self.legend, self.start)),
            shown={
                "story": story,
                "task": task,
                "facts": [list(pair) for pair in facts],
                "control": self.control,
                "face": self.face,
                "readings": list(self.readings),
                "meter": list(self.meter),
            },
            right={**(self.right or {}), self.name: self.best},
            reveals={**(self.reveals or {}), self.name: dict(self.lures)},
            rule=self.rule.as_json(),
            media=media(*self.shown),
            key=self.key(),
        )

    def key(self) -> Json:
        return {
            "session": self.session,
            "makings": list(self.makings),
            "aim": self.aim.as_json(),
            "units": list(self.units),
            "why": self.why,
            "passes": self.passes,
            "start": self.start,
        }
