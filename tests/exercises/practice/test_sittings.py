"""Sittings: one open at a time, its questions, its end, what it came to."""

from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import pytest
from django.db import connection
from pytest_django import DjangoAssertNumQueries

from course.cohorts.benches import usual_bench
from course.cohorts.equipping import set_figures
from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Asked, Sitting
from exercises.practice.attempts import ask, submit
from exercises.practice.debrief import Debrief, debrief
from exercises.practice.sittings import next_question, open_sitting, start, stop
from tests.answers import right_answer, wrong_answer
from tests.own import published

HEARING = "hearing-a-bad-edit"  # which one drill alone practises
FIGURES = ("pre_roll", "source_run_up", "lock", "relock", "erase_gap")


def take(sitting: Sitting, answers: str) -> list[Asked]:
    """Answer so many questions: "rw" is one right, then one wrong."""
    found = []
    for letter in answers:
        asked = next_question(sitting)
        assert asked
        submit(asked, right_answer(asked) if letter == "r" else wrong_answer(asked))
        found.append(asked)
    return found


def told(sitting: Sitting) -> Debrief:
    stop(sitting)
    return debrief(sitting)


def test_starting_twice_goes_on_with_the_open_one(mina: Person) -> None:
    assert start(mina, [], 5) == start(mina, ["mending"], 20)


@pytest.mark.django_db(transaction=True)
def test_starting_in_parallel_makes_one(mina: Person) -> None:
    together = Barrier(4)

    def begin(_: int) -> int:
        together.wait()
        try:
            return int(start(mina, [], 5).pk)
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as threads:
        assert len(set(threads.map(begin, range(4)))) == 1


def test_question_waits_until_it_is_answered(mina: Person) -> None:
    sitting = start(mina, [], 5)

    first = next_question(sitting)

    assert next_question(sitting) == first
    assert Asked.objects.count() == 1


def test_set_ends_with_its_last_answer(mina: Person) -> None:
    sitting = start(mina, [], 5)
    take(sitting, "rwrwr")

    assert next_question(sitting) is None
    assert not sitting.is_open
    assert open_sitting(mina) is None
    assert start(mina, [], 5) != sitting


def test_set_mixes_kinds(mina: Person) -> None:
    asked = take(start(mina, [], 5), "rrrrr")

    assert len({each.drill for each in asked}) == 5


def test_set_of_one_skill_asks_for_that_skill(mina: Person) -> None:
    asked = take(start(mina, [HEARING], 5), "rwrwr")

    assert {each.question["skill"] for each in asked} == {HEARING}


def test_set_takes_the_question_that_is_open_already(mina: Person) -> None:
    sitting = start(mina, [HEARING], 5)
    waiting = ask(mina, KINDS["spot-by-ear"])

    assert next_question(sitting) == waiting
    assert Asked.objects.get().sitting == sitting


def test_set_asks_an_own_drill_until_it_was_right(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    drill = published(ines, harbour)
    skills = list(drill.kind.skills)

    def asked_in(answers: str) -> int:
        sitting = start(mina, skills, 5)
        found = [each.drill for each in take(sitting, answers)]
        stop(sitting)
        return found.count(drill.slug)

    assert asked_in("wwwww") == 1
    assert asked_in("rrrrr") == 1
    assert asked_in("rrrrr") == 0


def test_set_leaves_to_a_set_that_names_it_what_an_instructor_reads(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    note = published(ines, harbour, form="text")

    asked = take(start(mina, [note.latest.skill], 5), "rrrrr")

    assert not any(each.kind.by_hand for each in asked)


def test_set_leaves_out_what_the_bench_has_no_meter_for(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    usual = {each: getattr(usual_bench(), each) for each in FIGURES}
    set_figures(ines, harbour, {**usual, "name": "Bench 1", "line_system": "625", "meters": []})

    asked = take(start(mina, list(KINDS["set-sound-level"].skills), 5), "wwwww")

    assert {"set-sound-level", "set-picture-level"}.isdisjoint(each.drill for each in asked)


def test_stopped_set_asks_nothing_more(mina: Person) -> None:
    sitting = start(mina, [], 5)
    take(sitting, "r")
    stop(sitting)

    assert next_question(sitting) is None
    ended = sitting.ended_at
    stop(sitting)
    assert sitting.ended_at == ended


def test_question_left_by_a_stop_stays_open_in_its_drill(mina: Person) -> None:
    sitting = start(mina, [], 5)
    waiting = next_question(sitting)
    assert waiting
    stop(sitting)

    assert ask(mina, waiting.kind) == waiting


def test_debrief_of_nothing(mina: Person) -> None:
    found = told(start(mina, [], 5))

    assert found.tried == "Nothing yet: you stopped before the first answer."
    assert found.happened == "Nothing was answered."


def test_debrief_counts_what_happened(mina: Person) -> None:
    sitting = start(mina, [HEARING], 5)
    take(sitting, "rrw")

    found = told(sitting)

    assert found.tried == "3 of 5 questions: Spot it by ear."
    assert found.happened == "2 right, 1 not right."


def test_debrief_names_the_belief_and_where_it_is_taught(mina: Person) -> None:
    sitting = start(mina, ["continuing-a-master"], 20)  # a wrong answer may show no belief
    while not any(found.misconceptions for found in mina.attempts.all()):
        take(sitting, "w")

    found = told(sitting)

    assert found.why.startswith("Perhaps you ")
    assert found.why_place
    assert found.next_place == found.why_place


def test_debrief_of_right_answers_names_a_drill_to_complete(mina: Person) -> None:
    sitting = start(mina, [HEARING], 5)
    take(sitting, "rr")

    found = told(sitting)

    assert found.why == "Nothing went wrong, so there is nothing to explain."
    assert found.next == "Not held yet, 1 more right without a miss:"
    assert found.next_drill
    assert found.next_drill.kind.slug == "spot-by-ear"


def test_debrief_queries_do_not_grow(
    mina: Person, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    sitting = start(mina, [HEARING], 20)
    for more in ("r", "rr", "rrrr"):
        take(sitting, more)
        with django_assert_num_queries(3):  # answers, bench, progress
            debrief(sitting)
