"""Fill an empty site from a backup; see README.md, "Backup"."""

from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser

from course.backup.kept import another_key_is_set
from course.backup.refusal import BackupRefused
from course.backup.restoring import restore
from course.unprepared import is_unprepared


class Command(BaseCommand):
    help = "Fill an empty site with what manage.py backup wrote to a file."
    requires_system_checks = ()  # the folder and the key come with the backup

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("file", type=Path)

    def handle(self, *args: Any, file: Path, **options: Any) -> None:
        try:
            found = restore(file)
        except BackupRefused as refusal:
            raise CommandError(str(refusal)) from refusal
        self.stdout.write(f"Restored as of {found.made_at}: {sum(found.rows.values())} rows.")
        if is_unprepared():
            self.stdout.write("It is of an earlier version. Run manage.py migrate.")
        if another_key_is_set():
            self.stdout.write(
                "SECRET_KEY is not the backup’s, which is in the file secret-key of DATA_DIR: "
                "links and sign-ins from before will not work."
            )
