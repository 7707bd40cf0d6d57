"""A procedure that is always the same, but for the decoys among its steps."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.job import MOST_DECOYS, worded
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.setting.draw import Draw


@dataclass(frozen=True, slots=True, kw_only=True)
class StandingProcedure:
    """As a `Procedure`, with `decoys` of which one at least is drawn.

    `otherwise` says some of its steps in other words.
    """

    name: str
    task: str
    steps: dict[str, str]
    rules: tuple[Before, ...]
    flaws: Sequence[Flaw]
    decoys: Sequence[Decoy]
    rule: Rule
    needs: dict[str, str] = field(default_factory=dict)
    otherwise: Mapping[str, str] = field(default_factory=dict)

    def made(self, draw: Draw) -> Procedure:
        decoys = draw.shuffled(self.decoys)[: draw.whole(1, MOST_DECOYS)]
        return Procedure(
            name=self.name,
            task=self.task,
            steps=worded(self.steps, self.otherwise, draw),
            rules=self.rules,
            flaws=(*self.flaws, *(flaw for decoy in decoys for flaw in decoy.flaws)),
            rule=self.rule,
            decoys={decoy.step: (decoy.text, decoy.why) for decoy in decoys},
            needs=self.needs,
        )
