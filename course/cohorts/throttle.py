"""How often something may be tried: signing in, a joining code, a new account.

A limit lets so many tries through at once, and one more with every pace that passes. So
nobody waits for longer than a pace, whoever has tried how often: tries are slowed down, and
nobody is shut out.

A try is counted before it is made and given back when it succeeds, so that what stays
counted is failures, and so that many tries at once can't slip past the limit together.
A try that is refused is not counted.

All that is kept of a key is when its tries will have worn off. A time that lies further ahead
than the limit can bring about was written while the clock was wrong, and counts for nothing.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.db import transaction
from django.db.models import F
from django.utils import timezone

from course.cohorts.models import Tries

PURGED_AT_ONCE = 200
LONGEST_KEPT = timedelta(days=1)
CLOCKS_DIFFER = timedelta(minutes=1)  # those of two servers, and of two requests that queued


class TooManyTriesError(Exception):
    """The limit is reached; `until` says when the next try is let through."""

    def __init__(self, until: datetime) -> None:
        super().__init__(f"Too many tries until {until:%F %T}.")
        self.until = until


@dataclass(frozen=True)
class Limit:
    """`at_once` tries by one key, and one more with each `pace`; `about` is what they are at."""

    key: str
    at_once: int
    pace: timedelta
    about: str = ""

    def worn_off(self, stored: datetime, now: datetime) -> datetime:
        """When the tries so far are forgotten: `stored`, where that can be true."""
        latest = now + self.at_once * self.pace
        return stored if now < stored <= latest + CLOCKS_DIFFER else now

    def opens(self, stored: datetime, now: datetime) -> datetime:
        """When one more try is let through."""
        return self.worn_off(stored, now) - (self.at_once - 1) * self.pace


def count_try(*limits: Limit) -> None:
    """Count one try under every limit, or none: `TooManyTriesError` if one is reached.

    Limits of several kinds are always given in the same order (address before account):
    two requests then never wait for each other's rows.
    """
    with transaction.atomic():
        stored = locked(limits)
        # Only now: one that waited here for others would else ask by a clock before theirs.
        now = timezone.now()
        opens = max(limit.opens(stored[limit.key].worn_off_at, now) for limit in limits)
        if opens > now:
            transaction.set_rollback(True)
        else:
            add_try(limits, stored, now)
    purge(now)
    if opens > now:
        raise TooManyTriesError(opens)


def locked(limits: tuple[Limit, ...]) -> Mapping[str, Tries]:
    """The row of each key, found or made, and nobody else's until the transaction ends."""
    # The insert locks: on PostgreSQL by its "on conflict do update", on SQLite because it
    # locks the whole database.
    now = timezone.now()
    Tries.objects.bulk_create(
        [Tries(key=limit.key, about=limit.about, worn_off_at=now) for limit in limits],
        update_conflicts=True,
        unique_fields=["key"],
        update_fields=["key"],
    )
    return Tries.objects.in_bulk([limit.key for limit in limits], field_name="key")


def add_try(limits: tuple[Limit, ...], stored: Mapping[str, Tries], now: datetime) -> None:
    for limit in limits:
        row = stored[limit.key]
        row.worn_off_at = limit.worn_off(row.worn_off_at, now) + limit.pace
        row.save(update_fields=["worn_off_at"])


def give_back(*limits: Limit) -> None:
    """The try came out well: it is not a failure."""
    for limit in limits:
        Tries.objects.filter(key=limit.key).update(worn_off_at=F("worn_off_at") - limit.pace)


def clear(limit: Limit) -> None:
    """Forget all failures that were counted under this limit."""
    Tries.objects.filter(key=limit.key).delete()


def forget(about: str) -> None:
    """Forget all failures at this, by whatever key."""
    Tries.objects.filter(about=about).delete()


def purge(now: datetime) -> None:
    """Delete some of the rows that say nothing any more."""
    with transaction.atomic():
        # Rows that another request holds are left to it, so that the two never deadlock.
        said = Tries.objects.exclude(worn_off_at__gt=now, worn_off_at__lte=now + LONGEST_KEPT)
        spent = said.select_for_update(skip_locked=True)
        Tries.objects.filter(pk__in=[row.pk for row in spent[:PURGED_AT_ONCE]]).delete()
