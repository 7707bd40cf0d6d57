"""One picture at a time, a few that wait, and a sentence for whoever comes after them."""

from concurrent.futures import FIRST_COMPLETED, Future, ThreadPoolExecutor, wait
from io import BytesIO
from threading import Event

import pytest

from exercises.signal.photographs import PhotographsBusy, photograph
from exercises.signal.photographs.limits import AT_ONCE, WAITING
from exercises.signal.photographs.turn import Turns
from tests.photographs import file_of, leads


def test_no_more_wait_than_may_and_the_rest_hear_so_at_once() -> None:
    turns, over = Turns(1, 2, 60), Event()

    def taken() -> bool:
        with turns.turn():
            return over.wait(60)

    with ThreadPoolExecutor(8) as pool:
        waiting = {pool.submit(taken) for _ in range(8)}
        refused: set[Future[bool]] = set()
        while len(refused) < 5:
            done, waiting = wait(waiting, timeout=60, return_when=FIRST_COMPLETED)
            assert done
            refused |= done
        over.set()

    assert all(isinstance(each.exception(), PhotographsBusy) for each in refused)
    assert [each.result() for each in waiting] == [True] * 3


def test_nobody_waits_for_long() -> None:
    turns = Turns(1, 1, 0.05)
    with turns.turn(), pytest.raises(PhotographsBusy), turns.turn():
        pass


def test_place_is_free_again_after_all_that_can_happen() -> None:
    turns = Turns(1, 1, 0.01)
    for _ in range(3):
        with pytest.raises(KeyError), turns.turn():
            raise KeyError
        with turns.turn(), pytest.raises(PhotographsBusy), turns.turn():
            pass

    with turns.turn():
        pass


def test_pictures_from_all_threads_at_once_are_taken_or_wait_for_a_better_time() -> None:
    content = file_of(leads())

    def send(_: int) -> str:
        try:
            return photograph(BytesIO(content), len(content)).digest
        except PhotographsBusy:
            return "busy"

    with ThreadPoolExecutor(8) as pool:
        answers = list(pool.map(send, range(8)))

    assert len(set(answers) - {"busy"}) == 1
    assert answers.count("busy") <= 8 - AT_ONCE - WAITING
