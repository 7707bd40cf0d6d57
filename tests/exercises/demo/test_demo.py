"""The demo: the same every time, made by answering, and never among other people's data."""

from io import StringIO

import pytest
from django.core.management import CommandError, call_command

from course.cohorts.benches import Bench
from course.cohorts.models import Cohort, Person
from course.lessons.reading import readings_of
from exercises.demo.cast import LEARNERS
from exercises.demo.written import WRITTEN
from exercises.drills.settings import Settings
from exercises.models import Attempt
from exercises.reviews import news_of, queue_of, replies_to
from exercises.scores import board_of

pytestmark = pytest.mark.django_db


def demo(*arguments: str) -> str:
    out = StringIO()
    call_command("demo", *arguments, stdout=out)
    return out.getvalue()


def answers() -> list[tuple[str, int, str, int]]:
    rows = Attempt.objects.order_by("person__sign_in_name", "pk")
    return list(rows.values_list("person__sign_in_name", "seed", "drill", "score"))


def test_demo_is_the_same_every_time() -> None:
    demo()
    first = answers()
    Person.objects.all().delete()
    Cohort.objects.all().delete()
    demo()

    assert answers() == first
    practised = sum(len(learner.days) * learner.answers for learner in LEARNERS)
    assert len(first) == practised + len(WRITTEN)


def test_demo_twice_changes_nothing() -> None:
    demo()
    first = answers()

    assert demo() == "The demo is there already. Nothing was changed.\n"
    assert answers() == first


def test_demo_has_a_bench_that_can_be_and_people_who_read() -> None:
    demo()
    bench = Bench.objects.get()
    wren = Person.objects.get(sign_in_name="wren")

    assert bench.as_settings().refusals() == {}
    assert bench.as_settings() != Settings.usual()
    assert set(bench.cohorts.all()) == set(Cohort.objects.all())
    assert [each.done for each in readings_of(wren)][:3] == [True, True, True]
    assert sum(each.begun for each in readings_of(Person.objects.get(sign_in_name="corin"))) == 1


def test_demo_has_answers_that_wait_and_a_reply_to_read() -> None:
    demo()
    orla = Person.objects.get(sign_in_name="orla")

    assert [each.person.sign_in_name for each in queue_of(orla)] == ["tamsin", "nell", "sorrel"]
    assert [each.by.sign_in_name for each in replies_to(orla)] == ["maeve"]
    assert [each.score for each in news_of(Person.objects.get(sign_in_name="wren"))] == [100]


def test_demo_refuses_other_peoples_data(mina: Person) -> None:
    with pytest.raises(CommandError, match="other people’s data"):
        demo()

    assert list(Person.objects.learning_in(mina.cohorts.get())) == [mina]
    assert Attempt.objects.count() == 0


def test_demo_learners_show_what_they_believe() -> None:
    demo()

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
    demo()

    boards = [board_of(cohort) for cohort in Cohort.objects.all()]
    idle = [row.person.name for board in boards for row in board.rows if not row.last_practised]
    assert [len(board.rows) for board in boards] == [6, 6]
    assert idle == ["Piran Locke"]


def test_sign_ins_are_printed_only_where_the_demo_is() -> None:
    before = demo("--sign-ins")
    demo()

    assert (before, "wren" in demo("--sign-ins")) == ("", True)
