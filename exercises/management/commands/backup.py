"""Everything that the site keeps, in one file; see README.md, "Backup"."""

from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser

from course.backup.archive import PICTURES
from course.backup.making import back_up
from course.backup.refusal import BackupRefused
from exercises.practice.uploads import without_picture


class Command(BaseCommand):
    help = (
        "Write the database, the pictures that learners sent and the secret key to one file, "
        "and check it. The site may be in use."
    )
    requires_system_checks = ()  # whatever else is wrong, what is kept can be backed up

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("file", type=Path, help="a tar; compressed if its name ends in .gz")

    def handle(self, *args: Any, file: Path, **options: Any) -> None:
        try:
            made = back_up(file.absolute())
        except BackupRefused as refusal:
            raise CommandError(str(refusal)) from refusal
        pictures = sum(name.startswith(PICTURES) for name in made.members)
        self.stdout.write(
            f"{file}: {sum(made.rows.values())} rows, {pictures} pictures and the secret key, "
            "read again and found whole."
        )
        missing = without_picture()
        if missing:
            self.stderr.write(
                f"Pictures that the database names and the folder has not: {missing}. "
                "Is DATA_DIR that of the site?"
            )
