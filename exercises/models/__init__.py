"""What the site keeps of practice, a module a thing."""

from exercises.models.append_only import AppendOnlyError
from exercises.models.asked import Asked, drill_choices, new_token
from exercises.models.attempt import Attempt
from exercises.models.sign_off import SignOff, Withdrawal

__all__ = [
    "AppendOnlyError",
    "Asked",
    "Attempt",
    "SignOff",
    "Withdrawal",
    "drill_choices",
    "new_token",
]
