"""Tries are counted per key and window, also when they come all at once."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from threading import Barrier

import pytest
from django.conf import settings
from django.db import connection
from django.test import RequestFactory

from course.cohorts import throttle
from course.cohorts.models import Tries
from course.cohorts.throttle import Limit, TooManyTriesError, count_try, forget, give_back

THREE = Limit("three", 3)
TWO = Limit("two", 2)
START = datetime(2026, 3, 2, 9, tzinfo=UTC)
WINDOW = timedelta(seconds=settings.SIGN_IN_WINDOW_SECONDS)


@pytest.fixture
def at(monkeypatch: pytest.MonkeyPatch) -> Callable[[timedelta], None]:
    """`at(minutes)` sets the clock that the throttle reads."""

    def set_clock(since_start: timedelta) -> None:
        monkeypatch.setattr("django.utils.timezone.now", lambda: START + since_start)

    set_clock(timedelta())
    return set_clock


def tries_until_refused(limit: Limit) -> int:
    for tries in range(100):
        try:
            count_try(limit)
        except TooManyTriesError:
            return tries
    return 100


def counts() -> dict[str, int]:
    return dict(Tries.objects.values_list("key", "count"))


@pytest.mark.django_db
def test_limit_refuses_the_try_after_the_last() -> None:
    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
def test_refusal_says_when_the_window_ends(at: Callable[[timedelta], None]) -> None:
    tries_until_refused(THREE)
    at(WINDOW / 3)

    with pytest.raises(TooManyTriesError) as refusal:
        count_try(THREE)

    assert refusal.value.until == START + WINDOW


@pytest.mark.django_db
def test_refused_tries_do_not_hold_the_limit(at: Callable[[timedelta], None]) -> None:
    tries_until_refused(THREE)
    at(WINDOW - timedelta(seconds=1))
    still_refused = tries_until_refused(THREE)
    at(WINDOW)

    assert (still_refused, tries_until_refused(THREE)) == (0, 3)


@pytest.mark.django_db
def test_refusal_by_one_limit_counts_under_none() -> None:
    tries_until_refused(TWO)

    with pytest.raises(TooManyTriesError):
        count_try(THREE, TWO)

    assert counts() == {"two": 2}


@pytest.mark.django_db
def test_success_takes_its_own_try_back() -> None:
    count_try(THREE)
    count_try(THREE)
    give_back(THREE)

    assert counts() == {"three": 1}


@pytest.mark.django_db
def test_success_takes_back_no_more_than_there_is() -> None:
    count_try(THREE)
    give_back(THREE)
    give_back(THREE)

    assert counts() == {"three": 0}


@pytest.mark.django_db
def test_forgotten_failures_leave_all_tries() -> None:
    tries_until_refused(THREE)
    forget(THREE)

    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
def test_rows_are_deleted_when_their_window_has_passed(at: Callable[[timedelta], None]) -> None:
    count_try(THREE)
    at(WINDOW / 2)
    count_try(TWO)
    at(WINDOW)
    count_try(Limit("other", 1))

    assert counts() == {"two": 1, "other": 1}


@pytest.mark.django_db
def test_row_keeps_nothing_that_was_typed() -> None:
    count_try(throttle.account_limit("a password typed here by mistake"))

    (key,) = counts()
    assert (len(key), set(key) - set("0123456789abcdef")) == (64, set())


def test_account_limit_is_one_for_every_spelling() -> None:
    assert throttle.account_limit(" Mina ") == throttle.account_limit("mina")


def test_limits_of_different_kinds_have_different_keys() -> None:
    request = RequestFactory().get("/", REMOTE_ADDR="192.0.2.7")
    limits = [
        throttle.address_limit(request),
        throttle.code_limit(request),
        throttle.new_account_limit(request),
        throttle.account_limit("192.0.2.7"),
    ]

    assert len({limit.key for limit in limits}) == 4


@pytest.mark.django_db(transaction=True)
def test_tries_at_once_do_not_slip_past_together() -> None:
    five, start = Limit("five", 5), Barrier(20)

    def one_try(number: int) -> bool:
        start.wait()
        try:
            count_try(Limit(f"address {number % 4}", 100), five)
        except TooManyTriesError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(20) as pool:
        taken = list(pool.map(one_try, range(20)))

    assert (sum(taken), counts()["five"]) == (5, 5)


@pytest.mark.django_db(transaction=True)
def test_window_that_passes_at_once_for_many_starts_again_once() -> None:
    passed = datetime.now(UTC) - WINDOW
    Tries.objects.bulk_create([Tries(key=f"old {n}", count=9, since=passed) for n in range(300)])
    Tries.objects.create(key="five", count=5, since=passed)
    five, start = Limit("five", 5), Barrier(12)

    def one_try(_: int) -> bool:
        start.wait()
        try:
            count_try(five)
        except TooManyTriesError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(12) as pool:
        taken = list(pool.map(one_try, range(12)))

    assert (sum(taken), counts()) == (5, {"five": 5})
