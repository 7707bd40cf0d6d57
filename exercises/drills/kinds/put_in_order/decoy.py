"""Steps that seem to belong and don't. Most of them are right in some other procedure."""

from dataclasses import dataclass

from exercises.drills.kinds.put_in_order.procedure import Flaw


@dataclass(frozen=True, slots=True, kw_only=True)
class Decoy:
    """A step, why it does not belong, and who does it.

    Somebody with the `belief`, if any, does it right after the step `after`, or `instead` of one.
    """

    step: str
    text: str
    why: str
    belief: str = ""
    after: str = ""
    instead: str = ""

    @property
    def flaws(self) -> list[Flaw]:
        flaw = Flaw(belief=self.belief, step=self.step, after=self.after, instead=self.instead)
        return [flaw] if self.belief else []
