"""Signing off: decided once, kept as it was, withdrawn with a reason."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from threading import Barrier

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection

from course.cohorts.models import Cohort, Person
from exercises.bench.verbs import begin, do
from exercises.drills.register import KINDS
from exercises.models import AppendOnlyError, SignOff, Withdrawal
from exercises.practice.attempts import ask, submit
from exercises.sign_offs.verbs import (
    Decision,
    WithdrawnError,
    lines_of,
    replaced_by,
    sign_off,
    standing_of,
    withdraw,
)
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals
from tests.answers import right_answer

NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)

Sign = Callable[..., SignOff]


def decision(state: str = "supervised", key: str = "k") -> Decision:
    return Decision(state=state, bench="Bench 1", note="", key=key)


@pytest.fixture
def sign(ines: Person, mina: Person, harbour: Cohort) -> Sign:
    """`sign("alone", day=2)`: Ines decides about Mina."""

    def signed(state: str = "supervised", *, day: int = 0) -> SignOff:
        now = NOON + timedelta(days=day)
        return sign_off(ines, mina, harbour, decision(state, f"{state}{day}"), now=now)

    return signed


def test_same_form_sent_twice_is_one_sign_off(sign: Sign) -> None:
    assert sign("alone") == sign("alone")
    assert SignOff.objects.count() == 1


@pytest.mark.django_db(transaction=True)
def test_same_form_sent_in_parallel_is_one_sign_off(
    ines: Person, mina: Person, harbour: Cohort
) -> None:
    together = Barrier(4)

    def send(_: int) -> str:
        together.wait()
        try:
            return sign_off(ines, mina, harbour, decision()).code
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as threads:
        codes = set(threads.map(send, range(4)))

    assert len(codes) == 1 == SignOff.objects.count()


def test_latest_sign_off_counts(sign: Sign, mina: Person, harbour: Cohort) -> None:
    first, second = sign("supervised", day=1), sign("not-yet", day=2)

    assert standing_of(mina) == [second]
    assert [line.state for line in lines_of(harbour)] == ["not-yet"]
    assert replaced_by(first) == second
    assert replaced_by(second) is None


def test_withdrawing_the_latest_brings_no_earlier_one_back(
    sign: Sign, ines: Person, mina: Person, harbour: Cohort
) -> None:
    sign("supervised", day=1)
    withdraw(ines, sign("alone", day=2), "Two masters were spoilt.")

    assert standing_of(mina) == []
    assert [line.state for line in lines_of(harbour)] == ["withdrawn"]


def test_withdrawing_twice_keeps_the_first_reason(sign: Sign, ines: Person) -> None:
    made = sign()
    first = withdraw(ines, made, "First")

    assert withdraw(ines, made, "First") == first
    with pytest.raises(WithdrawnError):
        withdraw(ines, made, "Second")
    assert Withdrawal.objects.get().reason == "First"


def test_each_cohort_has_its_own_sign_off(
    sign: Sign, mina: Person, rafe: Person, slipway: Cohort
) -> None:
    here = sign("supervised")
    there = sign_off(rafe, mina, slipway, decision("alone", "there"), now=NOON)

    assert set(standing_of(mina)) == {here, there}


def test_evidence_has_what_was_done_alone_at_the_practice_bench(sign: Sign, mina: Person) -> None:
    before = sign(day=1)
    for way in (Way.WATCH, Way.ALONE):
        do(begin(mina, practicals()["three-shots"], way), 0, "hand-in", {})

    told = [{"title": "Three shots in a row", "right": False, "score": 0}]
    after = sign(day=2).evidence["practicals"]
    assert before.evidence["practicals"] == []
    assert [each | {"score": 0} for each in after] == told


def test_evidence_stays_as_it_was_that_day(sign: Sign, mina: Person) -> None:
    made = sign()
    asked = ask(mina, KINDS["choose-the-mode"])
    submit(asked, right_answer(asked))

    def answers(found: SignOff) -> int:
        return sum(skill["answers"] for skill in found.evidence["skills"])

    assert answers(SignOff.objects.get(pk=made.pk)) == 0
    assert answers(sign("alone", day=1)) == 1


def test_sign_off_is_never_changed(sign: Sign) -> None:
    made = sign()
    made.state = "alone"

    with pytest.raises(AppendOnlyError):
        made.save()
    with pytest.raises(AppendOnlyError):
        SignOff.objects.update(state="alone")
    with pytest.raises(AppendOnlyError):
        SignOff.objects.all().delete()


def test_only_an_instructor_signs_and_only_learners_are_signed_off(
    ines: Person, mina: Person, tom: Person, rafe: Person, harbour: Cohort
) -> None:
    for by, whom in ((tom, mina), (ines, rafe)):
        with pytest.raises(PermissionDenied):
            sign_off(by, whom, harbour, decision())

    assert SignOff.objects.count() == 0


def test_sign_off_outlives_its_cohort(sign: Sign, harbour: Cohort) -> None:
    made = sign()
    harbour.delete()

    kept = SignOff.objects.get(pk=made.pk)
    assert (kept.cohort, kept.cohort_name) == (None, "Harbour group")
