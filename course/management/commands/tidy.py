"""What has had its day goes: archived cohorts, rosters never written. For once a day."""

from typing import Any

from django.core.management.base import BaseCommand
from django.utils import timezone

from course.cohorts.archiving import remove_due
from course.cohorts.roster.upload import purge


class Command(BaseCommand):
    help = "Remove archived cohorts on their day, and rosters that were never written."

    def handle(self, *args: Any, **options: Any) -> None:
        removed = remove_due(timezone.localdate())
        purge(timezone.now())
        for name in removed:
            self.stdout.write(f"Removed: {name}")
        if not removed:
            self.stdout.write("No cohort was due.")
