"""Tries are counted per key and wear off one by one, also when they come all at once."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from threading import Barrier

import pytest
from django.conf import settings
from django.contrib.auth.models import AnonymousUser
from django.db import connection
from django.http import HttpRequest
from django.test import RequestFactory

from course.cohorts import limits
from course.cohorts.models import Tries
from course.cohorts.throttle import (
    CLOCKS_DIFFER,
    Limit,
    TooManyTriesError,
    clear,
    count_try,
    forget,
    give_back,
)

MINUTE = timedelta(minutes=1)
THREE = Limit("three", 3, 2 * MINUTE, about="mina")
TWO = Limit("two", 2, MINUTE, about="tom")
START = datetime(2026, 3, 2, 9, tzinfo=UTC)
AFTER_A_WRONG_CLOCK = datetime(2036, 1, 1, tzinfo=UTC)


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


def keys() -> set[str]:
    return set(Tries.objects.values_list("key", flat=True))


@pytest.mark.django_db
def test_limit_refuses_the_try_after_the_last(at: Callable[[timedelta], None]) -> None:
    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
def test_refusal_says_when_one_try_is_worn_off(at: Callable[[timedelta], None]) -> None:
    count_try(THREE)
    at(MINUTE / 2)
    tries_until_refused(THREE)

    with pytest.raises(TooManyTriesError) as refusal:
        count_try(THREE)

    assert refusal.value.until == START + THREE.pace


@pytest.mark.django_db
def test_one_more_try_with_every_pace(at: Callable[[timedelta], None]) -> None:
    tries_until_refused(THREE)
    taken = []
    for minutes in range(1, 7):
        at(minutes * MINUTE)
        taken.append(tries_until_refused(THREE))

    assert taken == [0, 1, 0, 1, 0, 1]


@pytest.mark.django_db
def test_all_tries_are_free_again_after_a_quiet_time(at: Callable[[timedelta], None]) -> None:
    tries_until_refused(THREE)
    at(3 * THREE.pace)

    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
@pytest.mark.parametrize("hours", [-1, -24 * 365 * 10, 24 * 365 * 10])
def test_clock_that_is_set_keeps_nobody_waiting(
    at: Callable[[timedelta], None], hours: int
) -> None:
    tries_until_refused(THREE)
    at(timedelta(hours=hours))

    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
@pytest.mark.parametrize("seconds", [1, 59, 119, 359])
def test_clock_that_is_set_back_a_little_adds_no_more_than_a_minute(
    at: Callable[[timedelta], None], seconds: int
) -> None:
    tries_until_refused(THREE)
    at(timedelta(seconds=-seconds))
    tries_until_refused(THREE)
    at(timedelta(seconds=-seconds) + THREE.pace + CLOCKS_DIFFER)

    assert tries_until_refused(THREE) > 0


@pytest.mark.django_db
def test_refusal_by_one_limit_counts_under_none(at: Callable[[timedelta], None]) -> None:
    tries_until_refused(TWO)

    with pytest.raises(TooManyTriesError):
        count_try(THREE, TWO)

    assert (keys(), tries_until_refused(THREE)) == ({"two"}, 3)


@pytest.mark.django_db
def test_success_takes_its_own_try_back(at: Callable[[timedelta], None]) -> None:
    count_try(THREE)
    count_try(THREE)
    give_back(THREE)

    assert tries_until_refused(THREE) == 2


@pytest.mark.django_db
def test_success_takes_back_no_more_than_there_is(at: Callable[[timedelta], None]) -> None:
    count_try(THREE)
    for _ in range(5):
        give_back(THREE)

    assert tries_until_refused(THREE) == 3


@pytest.mark.django_db
@pytest.mark.parametrize("how", [lambda: clear(THREE), lambda: forget("mina")])
def test_forgotten_failures_leave_all_tries(
    at: Callable[[timedelta], None], how: Callable[[], None]
) -> None:
    tries_until_refused(THREE)
    tries_until_refused(TWO)
    how()

    assert (tries_until_refused(THREE), tries_until_refused(TWO)) == (3, 0)


@pytest.mark.django_db
def test_rows_are_deleted_when_they_say_nothing_any_more(at: Callable[[timedelta], None]) -> None:
    count_try(THREE)
    at(MINUTE)
    count_try(TWO)
    Tries.objects.create(key="wrong clock", worn_off_at=AFTER_A_WRONG_CLOCK)
    at(2 * MINUTE)
    count_try(Limit("other", 1, MINUTE))

    assert keys() == {"other"}


@pytest.mark.django_db
def test_row_keeps_nothing_that_was_typed() -> None:
    count_try(*limits.password_limits(request(), "a password typed here by mistake"))

    kept = "".join(key + about for key, about in Tries.objects.values_list("key", "about"))
    assert (len(kept), set(kept) - set("0123456789abcdef")) == (5 * 64, set())


def test_limits_are_the_same_for_every_spelling() -> None:
    assert limits.password_limits(request(), " Mina ") == limits.password_limits(request(), "mina")


def test_limits_of_different_kinds_have_different_keys() -> None:
    found = [
        *limits.password_limits(request(), "192.0.2.7"),
        limits.code_limit(request()),
        limits.card_limit(request()),
        limits.new_account_limit(request()),
    ]

    assert len({limit.key for limit in found}) == len(found) == 6


def test_no_limit_has_anybody_wait_for_longer_than_some_minutes() -> None:
    assert max(seconds for _, seconds in settings.PACES.values()) <= 5 * 60


def request() -> HttpRequest:
    made = RequestFactory().get("/", REMOTE_ADDR="192.0.2.7")
    made.user = AnonymousUser()
    return made


@pytest.mark.django_db(transaction=True)
def test_tries_at_once_do_not_slip_past_together() -> None:
    five, start = Limit("five", 5, 5 * MINUTE), Barrier(20)

    def one_try(number: int) -> bool:
        start.wait()
        try:
            count_try(Limit(f"address {number % 4}", 100, MINUTE), five)
        except TooManyTriesError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(20) as pool:
        taken = list(pool.map(one_try, range(20)))

    assert sum(taken) == 5


@pytest.mark.django_db(transaction=True)
def test_tries_that_have_worn_off_start_again_once_for_many_at_once() -> None:
    before = datetime.now(UTC) - MINUTE
    Tries.objects.bulk_create([Tries(key=f"old {n}", worn_off_at=before) for n in range(300)])
    Tries.objects.create(key="five", worn_off_at=before)
    five, start = Limit("five", 5, 5 * MINUTE), Barrier(12)

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

    assert (sum(taken), keys()) == (5, {"five"})


@pytest.mark.django_db
def test_a_try_that_waited_for_others_is_asked_by_the_clock_after_theirs(
    at: Callable[[timedelta], None],
) -> None:
    five, others = Limit("five", 5, 5 * MINUTE), iter(range(4))

    def others_go_first(
        execute: Callable[..., object], sql: str, params: object, many: bool, context: object
    ) -> object:
        for _ in others:
            at(timedelta(seconds=1))
            count_try(five)
        return execute(sql, params, many, context)

    with connection.execute_wrapper(others_go_first):
        count_try(five)

    assert tries_until_refused(five) == 0
