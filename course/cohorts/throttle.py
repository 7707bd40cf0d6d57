"""How often something may be tried: signing in, a joining code, a new account.

A try is counted before it is made and given back when it succeeds, so that what stays
counted is failures, and so that many tries at once can't slip past the limit together.
The first try of a window starts it; when it has passed, counting starts again. A try
that is refused is not counted: nobody can hold an account shut by trying on and on
without the window passing.

What was typed is not kept. A key is a digest under the site's secret.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

from django.conf import settings
from django.db import transaction
from django.db.models import F
from django.http import HttpRequest
from django.utils import timezone
from django.utils.crypto import salted_hmac

from course.cohorts.addresses import address_of
from course.cohorts.models import Person, Tries

PURGED_AT_ONCE = 200


class TooManyTriesError(Exception):
    """The limit is reached; `until` says when the next try is counted again."""

    def __init__(self, until: datetime) -> None:
        super().__init__(f"Too many tries until {until:%F %T}.")
        self.until = until


@dataclass(frozen=True)
class Limit:
    """At most `most` tries within the window by one key."""

    key: str
    most: int


def limit_of(kind: str, subject: str, most: int) -> Limit:
    return Limit(salted_hmac(f"throttle.{kind}", subject, algorithm="sha256").hexdigest(), most)


def account_limit(sign_in_name: str) -> Limit:
    """Passwords tried on one account, whether there is such an account or not."""
    name = Person.normalize_username(sign_in_name)
    return limit_of("account", name, settings.SIGN_IN_FAILURES_PER_ACCOUNT)


def address_limit(request: HttpRequest) -> Limit:
    """Passwords tried from one address, on whatever accounts."""
    return limit_of("address", address_of(request), settings.SIGN_IN_FAILURES_PER_ADDRESS)


def code_limit(request: HttpRequest) -> Limit:
    """Joining codes tried from one address."""
    return limit_of("code", address_of(request), settings.SIGN_IN_FAILURES_PER_ADDRESS)


def card_limit(request: HttpRequest) -> Limit:
    """Codes of bench cards tried from one address."""
    return limit_of("card", address_of(request), settings.SIGN_IN_FAILURES_PER_ADDRESS)


def new_account_limit(request: HttpRequest) -> Limit:
    """Accounts made from one address, which may be that of a whole classroom."""
    return limit_of("new account", address_of(request), settings.NEW_ACCOUNTS_PER_ADDRESS)


def count_try(*limits: Limit) -> None:
    """Count one try under every limit, or none: `TooManyTriesError` if one is reached.

    Limits of several kinds are always given in the same order (address before account):
    two requests then never wait for each other's rows.
    """
    now = timezone.now()
    with transaction.atomic():
        refused = [until for until in (count_one(limit, now) for limit in limits) if until]
        if refused:
            transaction.set_rollback(True)
    purge(now)
    if refused:
        raise TooManyTriesError(max(refused))


def count_one(limit: Limit, now: datetime) -> datetime | None:
    """Count a try; None, or when the limit will be lifted. Within a transaction."""
    # The insert locks the row, found or made, until the transaction ends: on PostgreSQL
    # by its "on conflict do update", on SQLite because it locks the whole database.
    Tries.objects.bulk_create(
        [Tries(key=limit.key, since=now)],
        update_conflicts=True,
        unique_fields=["key"],
        update_fields=["key"],
    )
    tries = Tries.objects.get(key=limit.key)
    if tries.since <= now - window():
        tries.count, tries.since = 0, now
    if tries.count >= limit.most:
        return tries.since + window()
    tries.count += 1
    tries.save()
    return None


def give_back(limit: Limit) -> None:
    """The try came out well: it is not a failure."""
    Tries.objects.filter(key=limit.key, count__gt=0).update(count=F("count") - 1)


def forget(limit: Limit) -> None:
    """Forget all failures under this limit."""
    Tries.objects.filter(key=limit.key).delete()


def purge(now: datetime) -> None:
    """Delete some of the rows whose window has passed."""
    with transaction.atomic():
        # Rows that another request holds are left to it, so that the two never deadlock.
        passed = Tries.objects.filter(since__lte=now - window()).select_for_update(skip_locked=True)
        Tries.objects.filter(pk__in=[row.pk for row in passed[:PURGED_AT_ONCE]]).delete()


def window() -> timedelta:
    return timedelta(seconds=settings.SIGN_IN_WINDOW_SECONDS)
