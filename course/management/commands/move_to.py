"""Move the site's rows to another database; see README.md, "Moving to PostgreSQL"."""

import sys
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser

from course.backup.moving import move_to
from course.backup.refusal import BackupRefused
from course.checks import OF_AN_OPERATOR

FROM_INPUT = "-"


class Command(BaseCommand):
    help = "Copy every row to an empty database, PostgreSQL for example, and compare each there."
    requires_system_checks = OF_AN_OPERATOR

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("url", help="as in DATABASE_URL; - reads it from standard input")

    def handle(self, *args: Any, url: str, **options: Any) -> None:
        if url == FROM_INPUT:
            url = sys.stdin.readline().strip()
        try:
            rows = move_to(url)
        except BackupRefused as refusal:
            raise CommandError(str(refusal)) from refusal
        self.stdout.write(
            f"{sum(rows.values())} rows of {len(rows)} tables are there, each the same in every "
            "column. Set DATABASE_URL to that database and start the site. The old database is "
            "as it was."
        )
