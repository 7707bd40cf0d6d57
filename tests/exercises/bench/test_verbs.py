"""Beginning a practical, doing things at its bench, and doing them twice or from two pages."""

from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import pytest
from django.db import connection

from course.cohorts.models import Person
from exercises.bench.verbs import DoneElsewhereError, begin, begin_again, do
from exercises.models import BenchAction, PracticalRun
from exercises.worktop.actions import replay
from exercises.worktop.done import BenchRefused
from exercises.worktop.guide import guided
from exercises.worktop.practical import MASTER, Way
from exercises.worktop.shelf import practicals

THREE_SHOTS = practicals()["three-shots"]
LOAD = ("load", {"machine": "player", "tape": "Tape 3"})


@pytest.fixture
def run(mina: Person) -> PracticalRun:
    return begin(mina, THREE_SHOTS, Way.ALONE)


def test_state_is_what_a_replay_of_the_actions_gives(run: PracticalRun) -> None:
    for step, _ in guided(run.worktop.set_up):
        do(run, run.done, step.name, step.arguments)

    rows = list(run.actions.order_by("number").values_list("name", "arguments"))
    assert run.worktop == replay(run.worktop.set_up, rows)
    assert (run.done, run.handed_in, run.is_open) == (len(rows), True, False)


def test_the_same_action_sent_twice_is_done_once(run: PracticalRun) -> None:
    first = do(run, 0, *LOAD)

    assert do(run, 0, *LOAD) == first
    assert run.done == 1


def test_a_page_that_missed_an_action_does_nothing(run: PracticalRun) -> None:
    do(run, 0, *LOAD)

    with pytest.raises(DoneElsewhereError):
        do(run, 0, "load", {"machine": "recorder", "tape": MASTER})
    assert list(run.actions.values_list("number", "name")) == [(1, "load")]


def test_what_is_refused_leaves_no_row(run: PracticalRun) -> None:
    with pytest.raises(BenchRefused, match="no cassette in the recorder"):
        do(run, 0, "wind", {"machine": "recorder", "to": 100})

    assert (BenchAction.objects.count(), run.done) == (0, 0)


def test_beginning_twice_goes_on_with_the_first(mina: Person, run: PracticalRun) -> None:
    assert begin(mina, THREE_SHOTS, Way.WATCH) == run


def test_beginning_again_keeps_the_run_as_it_stood(mina: Person, run: PracticalRun) -> None:
    do(run, 0, *LOAD)

    again = begin_again(run, THREE_SHOTS, Way.ALONE)

    run.refresh_from_db()
    assert (run.done, run.is_open, again.done, again.is_open) == (1, False, 0, True)
    with pytest.raises(BenchRefused, match="begun again"):
        do(run, 1, "take-out", {"machine": "player"})


def test_half_of_it_is_made_where_it_is_to_be_finished(mina: Person) -> None:
    run = begin(mina, THREE_SHOTS, Way.FINISH)

    assert len(run.worktop.edits) == 2
    assert run.worktop.looked_back


@pytest.mark.django_db(transaction=True)
def test_two_pages_at_once_do_not_fork_the_tape(run: PracticalRun) -> None:
    start = Barrier(6)

    def one_page(number: int) -> bool:
        start.wait()
        try:
            do(run, 0, "tracking", {"to": number})
        except DoneElsewhereError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(6) as pool:
        done = list(pool.map(one_page, range(6)))

    assert sum(done) == 1
    assert run.actions.count() == 1


def test_a_hand_in_is_debriefed_at_once(run: PracticalRun) -> None:
    for step, _ in guided(run.worktop.set_up):
        do(run, run.done, step.name, step.arguments)

    assert (run.right, run.score) == (True, 100)
    assert run.debrief is not None
    assert run.debrief["mistakes"] == []
