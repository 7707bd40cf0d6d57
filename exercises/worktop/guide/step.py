"""A step of the way, as it is told."""

from dataclasses import dataclass, field

from exercises.drills.asks import Json


@dataclass(frozen=True, slots=True, kw_only=True)
class GuidedStep:
    """An action, as a sentence that says what to do, why, and with which control."""

    name: str
    arguments: Json = field(default_factory=dict)
    what: str
    why: str
    how: str
