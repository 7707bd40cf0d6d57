"""What has had its day goes, in a process of its own; see README.md, "On a server"."""

import signal
from threading import Event
from typing import Any

from django.core.management.base import BaseCommand, CommandParser

from exercises.housekeeping.watch import EVERY, watch


class Command(BaseCommand):
    help = (
        "Once a day, at once if it was not done today: remove archived cohorts on their day, "
        "rosters never written, pictures without an answer, sign-ins that have ended, and made "
        "pictures over the limit. Goes on until it is stopped. Of several processes one does it."
    )
    requires_system_checks = ()  # it waits for what is missing

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument(
            "--site", type=int, metavar="PROCESS", help="end when this one, its parent, has ended"
        )
        parser.add_argument(
            "--every", type=float, default=EVERY, metavar="SECONDS", help="between two looks"
        )

    def handle(self, *args: Any, site: int | None, every: float, **options: Any) -> None:
        over = Event()
        for number in (signal.SIGTERM, signal.SIGINT):
            signal.signal(number, lambda *_: over.set())
        watch(over, self.say, site=site, every=every)

    def say(self, sentence: str) -> None:
        self.stdout.write(f"Housekeeping. {sentence}")
        self.stdout.flush()
