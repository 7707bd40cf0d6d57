"""Named people, so that a test about who may see what reads as a sentence.

Ines teaches the Harbour group, where Mina and Tom learn. Rafe teaches the Slipway
group, where Lena learns. Noor studies alone. Ada runs the server.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from django.conf import settings as django_settings
from django.db import connection
from django.test import Client, override_settings
from django.utils import timezone
from hypothesis import settings

from course.cohorts.models import Cohort, Person
from tests.people import CohortFactory, PersonFactory, instructor, learner

# A slow machine is no failure.
settings.register_profile("untimed", deadline=None)
settings.load_profile("untimed")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark what uses the database, so that another one can be asked for those tests alone.

    And of these what asks pages. Verbs, reads and forms meet the database, and their own tests ask
    another one; a page is the same on any, unless its tests carry the mark `database` by hand.
    """
    for item in items:
        by_hand = item.get_closest_marker("database")
        fixtures = set(getattr(item, "fixturenames", ()))
        if item.get_closest_marker("django_db") or fixtures & {"db", "transactional_db"}:
            item.add_marker("database")
        if not by_hand and (item.path.parent.name == "views" or item.path.stem == "test_views"):
            item.add_marker("page")
    # Those right here start whole sites. Begun last, they would leave the other cores without work.
    items.sort(key=lambda item: item.path.parent != Path(__file__).parent)


@pytest.fixture(scope="session", autouse=True)
def quick_settings(django_test_environment: None) -> Iterator[None]:
    """Hashing that costs nothing, and static files under their own names."""
    with override_settings(
        PASSWORD_HASHERS=["django.contrib.auth.hashers.MD5PasswordHasher"],
        STORAGES={
            **django_settings.STORAGES,
            "staticfiles": {
                "BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage",
            },
        },
    ):
        yield


@pytest.fixture(scope="session")
def django_db_modify_db_settings(django_db_modify_db_settings_parallel_suffix: None) -> None:
    """SQLite in a file, as the site has it: in memory, threads would lock one another out."""
    if connection.vendor == "sqlite":
        path = Path(django_settings.DATA_DIR) / "tests.sqlite3"
        connection.settings_dict["TEST"]["NAME"] = str(path)


@pytest.fixture
def ines(db: None) -> Person:
    """An instructor, of the Harbour group."""
    return instructor("Ines Marlow")


@pytest.fixture
def rafe(db: None) -> Person:
    """An instructor, of the Slipway group."""
    return instructor("Rafe Okell")


@pytest.fixture
def harbour(ines: Person) -> Cohort:
    """The cohort that Ines teaches."""
    cohort = CohortFactory.create(name="Harbour group")
    cohort.instructors.add(ines)
    return cohort


@pytest.fixture
def slipway(rafe: Person) -> Cohort:
    """The cohort that Rafe teaches."""
    cohort = CohortFactory.create(name="Slipway group")
    cohort.instructors.add(rafe)
    return cohort


@pytest.fixture
def mina(harbour: Cohort) -> Person:
    """A learner in Ines's cohort."""
    return learner("Mina Tarrant", harbour)


@pytest.fixture
def tom(harbour: Cohort) -> Person:
    """Another learner in Ines's cohort."""
    return learner("Tom Brandreth", harbour)


@pytest.fixture
def lena(slipway: Cohort) -> Person:
    """A learner in Rafe's cohort."""
    return learner("Lena Fosse", slipway)


@pytest.fixture
def solo(db: None) -> Person:
    """A learner without a cohort."""
    return learner("Noor Halloran")


@pytest.fixture
def ada(db: None) -> Person:
    """An administrator."""
    return PersonFactory.create(
        name="Ada Quill", sign_in_name="ada", role=Person.Role.ADMINISTRATOR
    )


@pytest.fixture
def stopped_clock(monkeypatch: pytest.MonkeyPatch) -> None:
    """A hundred tries take no time: none wears off meanwhile, however slow the machine is."""
    now = timezone.now()
    monkeypatch.setattr("django.utils.timezone.now", lambda: now)


@pytest.fixture
def client_of() -> Callable[[Person], Client]:
    """`client_of(mina)` is a browser in which Mina has signed in."""

    def signed_in(person: Person) -> Client:
        client = Client()
        client.force_login(person)
        return client

    return signed_in
