"""What there is in the demo."""

from collections.abc import Iterator
from datetime import timedelta
from io import StringIO

import pytest
from django.core.management import call_command
from django.db import transaction
from django.db.models import F
from django.utils import timezone
from pytest_django.plugin import DjangoDbBlocker

from course.cohorts.benches import Bench
from course.cohorts.models import Cohort, Person
from course.lessons.reading import readings_of
from exercises.assignments.assigned import standings_in
from exercises.demo.cast import LEARNERS, PASSWORD
from exercises.demo.pictured import SENT
from exercises.demo.written import WRITTEN
from exercises.drills.setting.settings import Settings
from exercises.mastery.items import ENOUGH
from exercises.models import Attempt, OwnDrill, Review, SignOff, Sitting, Upload
from exercises.practice.uploads import path_of
from exercises.reviews.verbs import news_of, queue_of, replies_to
from exercises.sign_offs.verbs import lines_of, standing_of

pytestmark = pytest.mark.django_db

TODAY = timezone.localdate()


@pytest.fixture(scope="module", autouse=True)
def built(django_db_setup: None, django_db_blocker: DjangoDbBlocker) -> Iterator[None]:
    """The demo, built once for the tests that only look at it."""
    with django_db_blocker.unblock(), transaction.atomic():
        call_command("demo", stdout=StringIO())
        yield
        transaction.set_rollback(True)


def test_demo_has_a_bench_that_can_be_and_people_who_read() -> None:
    bench = Bench.objects.get()
    wren = Person.objects.get(sign_in_name="wren")

    assert bench.as_settings().refusals() == {}
    assert bench.as_settings() != Settings.usual()
    assert set(bench.cohorts.all()) == set(Cohort.objects.all())
    assert [each.done for each in readings_of(wren)][:3] == [True, True, True]
    assert sum(each.begun for each in readings_of(wren)) == 1


def test_nothing_in_the_demo_is_answered_before_it_is_asked() -> None:
    assert not Attempt.objects.filter(answered_at__lt=F("asked_at")).exists()


def test_demo_has_the_answers_and_pictures_of_all() -> None:
    practised = sum(len(learner.days) * learner.answers for learner in LEARNERS)

    assert Attempt.objects.count() >= practised + len(WRITTEN)
    assert Upload.objects.count() == len(SENT)


def test_demo_has_answers_that_wait_and_a_reply_to_read() -> None:
    orla = Person.objects.get(sign_in_name="orla")

    written = [each for each in queue_of(orla) if each.drill == "free-answer"]
    assert [each.person.sign_in_name for each in written] == ["tamsin", "nell", "sorrel"]
    assert [each.by.sign_in_name for each in replies_to(orla)] == ["maeve"]
    assert [each.score for each in news_of(Person.objects.get(sign_in_name="wren"))] == [100]


def test_demo_has_own_drills_that_were_answered_by_belief() -> None:
    drills = {each.latest.title: each for each in OwnDrill.objects.all()}
    tug = Attempt.objects.filter(drill=drills["What became of the tug"].slug)
    wrong = [each for each in tug if not each.right]

    assert set(drills) == {
        "A gull over the winch",
        "The leads of bench 1",
        "What became of the tug",
    }
    assert len(tug) >= ENOUGH
    assert {belief for each in wrong for belief in each.misconceptions} >= {"mend-later"}


def test_demo_has_a_picture_that_waits_and_one_that_was_read() -> None:
    sent = Upload.objects.select_related("attempt__person", "attempt__outcome").order_by("pk")
    stands = [(each.attempt.person.sign_in_name, each.attempt.result) for each in sent]

    assert stands == [("maeve", (True, 100, False)), ("lotte", (False, 0, True))]
    assert all(path_of(each.name).stat().st_size == each.size < 60_000 for each in sent)


def test_demo_has_assignments_of_every_sort_in_every_state() -> None:
    cohorts = Cohort.objects.all()
    stands = [
        standing
        for cohort in cohorts
        for each in standings_in(cohort, now=timezone.now() + timedelta(minutes=1))
        for standing in each
    ]

    assert {each.assignment.what for each in stands} == {"drills", "lesson", "practical"}
    assert {each.words for each in stands} >= {
        *("done", "done, late", "begun, overdue", "to do", "to do, overdue"),
        "waits for the instructor",
    }
    assert [each.person.sign_in_name for each in stands if each.extended] == ["bram"]


def test_demo_has_an_instructor_who_teaches_with_another_and_a_code_that_ends() -> None:
    fenn = Person.objects.get(sign_in_name="fenn")
    (shared,) = Cohort.objects.taught_by(fenn)
    hester = Person.objects.get(sign_in_name="hester")

    assert {each.sign_in_name for each in shared.instructors.all()} == {"fenn", "orla"}
    assert (shared.code_last_day, shared.code_has_ended) == (TODAY + timedelta(days=9), False)
    assert [(each.cohort, each.instructor) for each in standing_of(hester)] == [(shared, fenn)]


def test_demo_has_a_cohort_that_is_over_and_goes_on_its_day() -> None:
    archived = Cohort.objects.archived().get()
    last = Attempt.objects.filter(person__cohorts=archived).latest("answered_at")
    states = [line.state for line in lines_of(archived)]

    assert archived.archived_at
    assert last.answered_at < archived.archived_at
    assert archived.remove_on == TODAY + timedelta(days=120)
    assert states == ["supervised", "alone", "none"]


def test_demo_twice_changes_nothing() -> None:
    before = Attempt.objects.count()
    out = StringIO()
    call_command("demo", stdout=out)

    assert out.getvalue() == "The demo is there already. Nothing was changed.\n"
    assert Attempt.objects.count() == before


def test_sign_ins_of_the_demo_are_printed() -> None:
    out = StringIO()
    call_command("demo", "--sign-ins", stdout=out)

    assert [name in out.getvalue() for name in ("wren", "orla", "fenn")] == [True] * 3


def test_everybody_in_the_demo_signs_in_with_its_password() -> None:
    assert {person.check_password(PASSWORD) for person in Person.objects.all()} == {True}


def test_demo_learners_show_what_they_believe() -> None:
    shown = {
        learner.sign_in_name: {
            belief
            for found in Attempt.objects.filter(person__sign_in_name=learner.sign_in_name)
            for belief in found.misconceptions
        }
        for learner in LEARNERS
    }
    stubborn = {
        learner.sign_in_name: {belief for belief, days in learner.beliefs.items() if days == 99}
        for learner in LEARNERS
    }
    assert {name: beliefs & shown[name] for name, beliefs in stubborn.items()} == stubborn


def test_demo_boards_are_full_but_for_who_has_not_begun() -> None:
    found = [cohort.learners.order_by("name") for cohort in Cohort.objects.all()]
    idle = [person.name for people in found for person in people.filter(summary=None)]
    assert [len(people) for people in found] == [3, 3, 12]
    assert idle == ["Mabyn Trew", "Piran Locke"]


def test_demo_was_kept_in_the_order_in_which_it_happened() -> None:
    for moments in (
        Attempt.objects.order_by("pk").values_list("answered_at", flat=True),
        Review.objects.order_by("pk").values_list("at", flat=True),
        SignOff.objects.order_by("pk").values_list("at", flat=True),
        Cohort.objects.order_by("pk").values_list("started_at", flat=True),
        Sitting.objects.order_by("pk").values_list("started_at", flat=True),
    ):
        assert list(moments) == sorted(moments)
