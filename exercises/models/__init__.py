"""What the site keeps of practice, a module a thing."""

from course.append_only import AppendOnlyError
from exercises.models.asked import Asked, drill_choices
from exercises.models.assignment import Assignment, Extension
from exercises.models.attempt import RIGHT_NOW, SCORE_NOW, Attempt
from exercises.models.bench_sheet import BenchSheet
from exercises.models.desk import OwnDrill, OwnRevision
from exercises.models.practical_run import BenchAction, PracticalRun
from exercises.models.review import Outcome, Review, ReviewRead
from exercises.models.sign_off import SignOff, Withdrawal
from exercises.models.sitting import Sitting
from exercises.models.summary import Summary
from exercises.models.tokens import new_token
from exercises.models.upload import Upload

__all__ = [
    "RIGHT_NOW",
    "SCORE_NOW",
    "AppendOnlyError",
    "Asked",
    "Assignment",
    "Attempt",
    "BenchAction",
    "BenchSheet",
    "Extension",
    "Outcome",
    "OwnDrill",
    "OwnRevision",
    "PracticalRun",
    "Review",
    "ReviewRead",
    "SignOff",
    "Sitting",
    "Summary",
    "Upload",
    "Withdrawal",
    "drill_choices",
    "new_token",
]
