"""A round of housekeeping by hand, whether it is due or not."""

from typing import Any

from django.core.management.base import BaseCommand
from django.utils import timezone

from course.checks import OF_AN_OPERATOR
from exercises.housekeeping.chores import CHORES


class Command(BaseCommand):
    help = "Do at once, by hand, what `housekeeping` does once a day, and end."
    requires_system_checks = OF_AN_OPERATOR

    def handle(self, *args: Any, **options: Any) -> None:
        now = timezone.now()
        done = [said for chore in CHORES for said in chore(now)]
        self.stdout.write("\n".join(done or ["Nothing was due."]))
