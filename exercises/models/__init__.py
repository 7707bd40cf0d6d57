"""What the site keeps of practice, a module a thing."""

from exercises.models.append_only import AppendOnlyError
from exercises.models.asked import Asked, drill_choices, new_token
from exercises.models.attempt import Attempt

__all__ = ["AppendOnlyError", "Asked", "Attempt", "drill_choices", "new_token"]
