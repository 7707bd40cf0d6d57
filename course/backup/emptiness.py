"""May a site, or a database, be filled? Only where nothing of anybody would be lost."""

from django.contrib.auth import get_user_model
from django.db.backends.base.base import BaseDatabaseWrapper

from course.backup import kept, sqlite
from course.backup.archive import PICTURES
from course.backup.manifest import Manifest
from course.backup.refusal import BackupRefused


def refuse_full_database(database: BaseDatabaseWrapper, which: str) -> None:
    """BackupRefused where somebody has an account; all else in a database is somebody's."""
    people = people_in(database)
    if people:
        accounts = "1 account" if people == 1 else f"{people} accounts"
        raise BackupRefused(f"{which} is not empty: it has {accounts}. Nothing was changed.")


def people_in(database: BaseDatabaseWrapper) -> int:
    """How many accounts a database has; none where it was never prepared, or never made."""
    if not is_there(database):
        return 0
    table = get_user_model()._meta.db_table
    if table not in database.introspection.table_names():
        return 0
    with database.cursor() as cursor:
        cursor.execute(f"SELECT count(*) FROM {database.ops.quote_name(table)}")  # noqa: S608
        return int(cursor.fetchone()[0])


def is_there(database: BaseDatabaseWrapper) -> bool:
    """Whether there is anything to ask: asking a file that is missing would make it."""
    if database.vendor != "sqlite":
        return True
    path = sqlite.path_of(database)
    return path.exists()


def refuse_other_pictures(manifest: Manifest) -> None:
    """BackupRefused where the site has a picture that the backup has not.

    Those of the backup may be there: an earlier restore was cut off after it wrote them.
    """
    strange = [
        path.name for path in kept.pictures() if f"{PICTURES}/{path.name}" not in manifest.members
    ]
    if strange:
        raise BackupRefused(
            f"The site is not empty: its folder of pictures has {len(strange)} that the backup "
            "has not. Nothing was changed."
        )
