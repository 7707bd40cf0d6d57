"""What a round consists of. Each chore can be done twice, and says what it did."""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta

from django.conf import settings
from django.contrib.sessions.models import Session
from django.core.cache import caches
from django.utils import timezone

from course.cohorts.archiving import remove_due
from course.cohorts.roster.upload import purge
from course.kept_files import KeptFiles
from exercises.practice.uploads import sweep


def archived_cohorts(now: datetime) -> Iterator[str]:
    """Those whose day has come."""
    for name in remove_due(timezone.localdate(now)):
        yield f"Removed: {name}"


def rosters(now: datetime) -> Iterator[str]:
    """Those never written, and links of those that were."""
    purge(now)
    yield from ()


def pictures(now: datetime) -> Iterator[str]:
    """Files whose answer was never kept."""
    if strays := sweep(now):
        yield f"Pictures without an answer, removed: {strays}"


def sign_ins(now: datetime) -> Iterator[str]:
    """Sessions that have ended; also where a clock that was ahead has dated the end."""
    latest = now + timedelta(seconds=settings.SESSION_COOKIE_AGE)
    ended, _ = Session.objects.exclude(expire_date__range=(now, latest)).delete()
    if ended:
        yield f"Sign-ins that have ended, removed: {ended}"


def made(now: datetime) -> Iterator[str]:
    """Pictures and sounds over the limit. Redis sees to its own."""
    kept = caches["made"]
    if isinstance(kept, KeptFiles) and (dropped := kept.trim()):
        yield f"Made pictures and sounds over the limit, removed: {dropped}"


CHORES: tuple[Callable[[datetime], Iterator[str]], ...] = (
    archived_cohorts,
    rosters,
    pictures,
    sign_ins,
    made,
)
