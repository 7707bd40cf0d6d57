"""The decisions that the demo's instructor has signed, each on its day."""

from dataclasses import dataclass, field
from datetime import datetime, timedelta

from course.cohorts.models import Cohort, Person
from exercises.demo.cast import SIGNED, Signed
from exercises.sign_offs import Decision, bench_named, sign_off, withdraw


@dataclass
class Signing:
    """What is still to be signed of one learner; between their days of practice."""

    instructor: Person
    learner: Person
    cohort: Cohort
    until: datetime
    waiting: list[Signed] = field(default_factory=list)

    def __post_init__(self) -> None:
        own = [each for each in SIGNED if each.sign_in_name == self.learner.sign_in_name]
        self.waiting = sorted(own, key=lambda each: -each.ago)

    def before(self, ago: int) -> None:
        """Sign what was decided longer ago than so many days."""
        while self.waiting and self.waiting[0].ago > ago:
            self.sign(self.waiting.pop(0))

    def sign(self, signed: Signed) -> None:
        at = (self.until - timedelta(days=signed.ago)).replace(hour=19, minute=40)
        decision = Decision(
            state=signed.state,
            bench=bench_named(self.cohort),
            note=signed.note,
            key=f"demo-{signed.sign_in_name}-{signed.ago}",
        )
        made = sign_off(self.instructor, self.learner, self.cohort, decision, now=at)
        if signed.withdrawn:
            later = at + timedelta(days=2)
            withdraw(self.instructor, made, signed.withdrawn, now=later)
