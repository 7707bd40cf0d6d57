"""What has had its day goes: archived cohorts, rosters never written. For once a day."""

from typing import Any

from django.core.management.base import BaseCommand
from django.utils import timezone

from course.cohorts.archiving import remove_due
from course.cohorts.roster.upload import purge
from exercises.uploads import sweep


class Command(BaseCommand):
    help = (
        "Remove archived cohorts on their day, rosters that were never written, and pictures "
        "whose answer was never kept."
    )

    def handle(self, *args: Any, **options: Any) -> None:
        removed = remove_due(timezone.localdate())
        purge(timezone.now())
        strays = sweep(timezone.now())
        for name in removed:
            self.stdout.write(f"Removed: {name}")
        if not removed:
            self.stdout.write("No cohort was due.")
        if strays:
            self.stdout.write(f"Pictures without an answer, removed: {strays}")
