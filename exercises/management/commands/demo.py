"""Build the demo in an empty database; see README.md, "Run"."""

from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.utils import timezone

from exercises.demo.build import OtherPeopleError, build, is_built
from exercises.demo.cast import ADMINISTRATOR, FELLOW, INSTRUCTOR, LEARNERS, PASSWORD
from exercises.demo.groups import GROUPS


class Command(BaseCommand):
    help = "Build the Quay Street demo: its groups, their instructors, weeks of answers."
    requires_system_checks = ()  # `start` calls it before there is a secret key

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--sign-ins", action="store_true", help="only print the sign-ins")

    def handle(self, *args: Any, **options: Any) -> None:
        if options["sign_ins"]:
            self.print_sign_ins()
            return
        if is_built():
            self.stdout.write("The demo is there already. Nothing was changed.")
            return
        try:
            build(timezone.localtime())
        except OtherPeopleError as refusal:
            raise CommandError(
                "This database has other people’s data. The demo needs an empty one: "
                "set DATA_DIR or DATABASE_URL to another."
            ) from refusal
        self.stdout.write(f"The demo is ready: {len(LEARNERS)} learners in {len(GROUPS)} cohorts.")

    def print_sign_ins(self) -> None:
        """Nothing where the demo was never built."""
        if not is_built():
            return
        people = [
            ("a learner", LEARNERS[0].sign_in_name),
            ("an instructor", INSTRUCTOR[0]),
            ("another, of one cohort", FELLOW[0]),
            ("an administrator", ADMINISTRATOR[0]),
        ]
        self.stdout.write("Sign in to the demo as")
        for who, sign_in_name in people:
            self.stdout.write(f"  {sign_in_name:10} ({who})")
        self.stdout.write(f"each with the password: {PASSWORD}")
