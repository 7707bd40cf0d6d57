"""The decisions that the demo's instructors have signed, each on its day."""

from datetime import datetime, timedelta

from course.cohorts.models import Cohort, Person
from exercises.demo.cast import SIGNED, Signed
from exercises.demo.in_order import Story
from exercises.sign_offs.verbs import Decision, bench_named, sign_off, withdraw


def sign(instructor: Person, learner: Person, cohort: Cohort, until: datetime) -> Story:
    """All that was decided of one learner; each with the evidence of its evening."""
    for each in SIGNED:
        if each.sign_in_name == learner.sign_in_name:
            at = (until - timedelta(days=each.ago)).replace(hour=19, minute=40)
            yield at
            made = sign_off(instructor, learner, cohort, decision(each, cohort), now=at)
            if each.withdrawn:
                later = at + timedelta(days=2)
                yield later
                withdraw(instructor, made, each.withdrawn, now=later)


def decision(signed: Signed, cohort: Cohort) -> Decision:
    return Decision(
        state=signed.state,
        bench=bench_named(cohort),
        note=signed.note,
        key=f"demo-{signed.sign_in_name}-{signed.ago}",
    )
