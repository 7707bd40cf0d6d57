"""How the site talks to a database: SQLite in a file, or PostgreSQL."""

import warnings
from typing import Any

import environ
from django.core.exceptions import ImproperlyConfigured

SQLITE = "course.sqlite"  # Django's own, see there
POSTGRESQL = "django.db.backends.postgresql"

# FULL: an answer that was acknowledged survives a power cut. IMMEDIATE: two submissions at once
# queue for the lock, where a deferred one would fail. Connections stay open: the last one to
# close copies the WAL into the database and deletes it, which costs every request its time.
WITH_SQLITE: dict[str, Any] = {
    "CONN_MAX_AGE": None,
    "OPTIONS": {
        "transaction_mode": "IMMEDIATE",
        "timeout": 20,
        "init_command": "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;",
    },
}
# Connections stay open here too, one a thread, and each is tried before a request uses it: what a
# restart of the server has cut is then made anew, and no request fails. A server that is silent is
# given up within seconds, so that whoever waits is told.
WITH_POSTGRESQL: dict[str, Any] = {
    "CONN_MAX_AGE": 600,  # seconds
    "CONN_HEALTH_CHECKS": True,
    "OPTIONS": {
        "connect_timeout": 5,  # seconds
        "tcp_user_timeout": 10_000,  # milliseconds: what was sent, and is not acknowledged
        "keepalives_idle": 10,  # seconds: how soon a server that owes an answer is looked for
        "keepalives_interval": 5,
    },
}
ENGINES = {"django.db.backends.sqlite3": SQLITE, POSTGRESQL: POSTGRESQL}
WITH = {SQLITE: WITH_SQLITE, POSTGRESQL: WITH_POSTGRESQL}


def database_at(url: str) -> dict[str, Any]:
    """The setting of the database that a URL names; ValueError where the site can't use it."""
    try:
        with warnings.catch_warnings(action="ignore"):  # of an unknown kind, told below
            named = environ.Env.db_url_config(url)
    except (ImproperlyConfigured, KeyError) as error:
        raise ValueError("This is not the URL of a database.") from error
    engine = ENGINES.get(named.get("ENGINE", ""))
    if not engine or not named.get("NAME"):
        raise ValueError("The site works with SQLite and PostgreSQL.")
    return equipped({**named, "ENGINE": engine})


def equipped(database: dict[str, Any]) -> dict[str, Any]:
    """The setting of a database as its URL gives it, with the site's own ways."""
    ours = WITH[database["ENGINE"]]
    options = {**database.get("OPTIONS", {}), **ours["OPTIONS"]}
    return {**database, **ours, "OPTIONS": options}
