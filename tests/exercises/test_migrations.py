"""What migrations do to rows that earlier versions have left."""

from importlib import import_module

from django.apps import apps
from django.db import connection
from django.db.models import QuerySet

from course.cohorts.models import Cohort, Person
from exercises.drills.kinds.bench_practical import KIND as BENCH_PRACTICAL
from exercises.drills.kinds.bench_practical import practical
from exercises.drills.register import KINDS
from exercises.models import Asked, SignOff, Sitting
from exercises.practice.attempts import ask, new_asked, submit
from exercises.practice.sittings import next_question, start, stop
from exercises.sign_offs.verbs import Decision, sign_off
from tests.answers import right_answer


def migrate(module: str, step: str) -> None:
    getattr(import_module(module), step)(apps, connection.schema_editor())


def test_report_that_nobody_could_write_is_asked_no_more(mina: Person) -> None:
    asked = new_asked(mina, BENCH_PRACTICAL, 0, practical("Black", "Lay ten seconds."), None)
    asked.latest = False
    asked.save()
    report = submit(asked, {"text": "Ten seconds of black. " * 3})
    stray = new_asked(mina, BENCH_PRACTICAL, 0, practical("A bench practical", "None."), None)
    stray.again = report
    stray.save()
    waiting = ask(mina, KINDS["free-answer"])

    migrate("exercises.migrations.0009_reports_asked_again", "forget")

    assert set(Asked.objects.filter(attempt=None)) == {waiting}
    assert Asked.objects.filter(attempt=report).exists()


def test_earlier_sign_offs_get_the_names_of_the_day(
    ines: Person, mina: Person, tom: Person, harbour: Cohort
) -> None:
    for person in (mina, tom):
        decision = Decision(state="alone", bench="Bench 1", note="", key=person.sign_in_name)
        sign_off(ines, person, harbour, decision)
    QuerySet(SignOff).update(person_name="", instructor_name="")

    migrate("exercises.migrations.0011_sign_offs_keep_names", "keep_names")

    kept = SignOff.objects.values_list("person_name", "instructor_name").order_by("pk")
    assert list(kept) == [("Mina Tarrant", "Ines Marlow"), ("Tom Brandreth", "Ines Marlow")]


def test_accounts_deleted_before_are_known(mina: Person, tom: Person) -> None:
    Person.objects.filter(pk=mina.pk).update(
        name="Former learner", email="", is_active=False, sign_in_name="former-x"
    )
    migrate("course.cohorts.migrations.0005_deleted_accounts", "mark")

    assert list(Person.objects.filter(is_deleted=True)) == [mina]


def test_earlier_sittings_know_what_was_answered_in_them(mina: Person) -> None:
    for answers in (2, 0):
        sitting = start(mina, ["care-and-safety"], 5)
        for _ in range(answers):
            asked = next_question(sitting)
            assert asked
            submit(asked, right_answer(asked))
        next_question(sitting)
        stop(sitting)
    Sitting.objects.update(answered=0)

    migrate("exercises.migrations.0016_summaries_carry_the_last_answers", "count_answers")

    assert list(Sitting.objects.order_by("pk").values_list("answered", flat=True)) == [2, 0]
