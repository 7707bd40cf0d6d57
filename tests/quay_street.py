"""Sites that begin with something in them: the kept demo, or the tables alone.

Each is brought to this version once in a run. A test gets a copy, to do with as it likes.
"""

import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from shutil import copytree
from tempfile import TemporaryDirectory

from tests.once import once
from tests.sites import ON_POSTGRESQL, QUAY_STREET, Site, new_database


def as_restored(data: Path) -> Site:
    """The kept demo on SQLite, as its own version left it."""
    return copied("quay-street-restored", restore, data)


def quay_street(data: Path, url: str = "") -> Site:
    """The kept demo, brought to this version; in the empty database that a `url` names."""
    site = copied("quay-street", upgrade, data)
    if url:
        put_back(once("quay-street.dump", lambda dump: move(site, url, dump)), url)
        site.url = url
    return site


@contextmanager
def quay_street_here(data: Path) -> Iterator[Site]:
    """The same, in the kind of database that the tests run on."""
    if not ON_POSTGRESQL:
        yield quay_street(data)
        return
    with new_database() as url:
        yield quay_street(data, url)


def backup() -> Path:
    """What `manage.py backup` wrote of it there, the only file in its folder; to be read alone."""
    return once("backups", back_up) / "quay-street.tar"


def prepared(site: Site) -> Site:
    """Give an empty site its tables, as `migrate` does."""
    if site.url:
        put_back(once("prepared.dump", lambda dump: prepare(site, dump)), site.url)
        site.data.mkdir(exist_ok=True)
    else:
        copied("prepared", migrate, site.data)
    return site


def copied(name: str, make: Callable[[Site], object], data: Path) -> Site:
    made = once(name, lambda folder: make(Site(folder)))
    return Site(copytree(made, data, dirs_exist_ok=True))


def restore(site: Site) -> None:
    site.manage("restore", str(QUAY_STREET))


def upgrade(site: Site) -> None:
    as_restored(site.data).manage("migrate", "--verbosity=0", "--skip-checks")


def migrate(site: Site) -> None:
    site.data.mkdir(exist_ok=True)
    site.manage("migrate", "--verbosity=0", "--skip-checks")


def back_up(folder: Path) -> None:
    folder.mkdir()
    with TemporaryDirectory() as data, quay_street_here(Path(data)) as site:
        site.manage("backup", str(folder / "quay-street.tar"))


def move(site: Site, url: str, dump: Path) -> None:
    site.manage("move_to", url)
    keep(url, dump)


def prepare(site: Site, dump: Path) -> None:
    migrate(site)
    keep(site.url, dump)


def keep(url: str, dump: Path) -> None:
    subprocess.run(["pg_dump", "--format=custom", "-f", str(dump), url], check=True)


def put_back(dump: Path, url: str) -> None:
    """Fill a database, also the one that was dumped: what is in it makes room."""
    options = ["--clean", "--if-exists", "--no-owner", "--no-privileges", "--single-transaction"]
    subprocess.run(["pg_restore", *options, f"--dbname={url}", str(dump)], check=True)
