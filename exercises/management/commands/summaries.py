"""Prove that the summaries of attempts are right, or make them anew."""

from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser

from course.checks import OF_AN_OPERATOR
from exercises.standing.summaries import differing, rebuild, who_has_answered


class Command(BaseCommand):
    help = "Compare the summaries that boards are drawn from with the attempts themselves."
    requires_system_checks = OF_AN_OPERATOR

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--rebuild", action="store_true", help="make them anew first")

    def handle(self, *args: Any, **options: Any) -> None:
        people = who_has_answered()
        if options["rebuild"]:
            self.stdout.write(f"Made {rebuild(people)} summaries anew.")
        wrong = list(differing(people))
        for person_id, columns in wrong:
            self.stdout.write(f"person {person_id}: {', '.join(columns)}")
        if wrong:
            raise CommandError(f"{len(wrong)} of {len(people)} summaries are wrong: --rebuild.")
        self.stdout.write(f"{len(people)} summaries are what the attempts come to.")
