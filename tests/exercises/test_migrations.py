"""What migrations do to rows that earlier versions have left."""

from importlib import import_module

from django.apps import apps

from course.cohorts.models import Person
from exercises.attempts import ask, new_asked, submit
from exercises.drills.bench_practical import BENCH_PRACTICAL, practical
from exercises.drills.register import KINDS
from exercises.models import Asked


def test_report_that_nobody_could_write_is_asked_no_more(mina: Person) -> None:
    asked = new_asked(mina, BENCH_PRACTICAL, 0, practical("Black", "Lay ten seconds."), None)
    asked.latest = False
    asked.save()
    report = submit(asked, {"text": "Ten seconds of black. " * 3})
    stray = new_asked(mina, BENCH_PRACTICAL, 0, practical("A bench practical", "None."), None)
    stray.again = report
    stray.save()
    waiting = ask(mina, KINDS["free-answer"])

    import_module("exercises.migrations.0009_reports_asked_again").forget(apps, None)

    assert set(Asked.objects.filter(attempt=None)) == {waiting}
    assert Asked.objects.filter(attempt=report).exists()
