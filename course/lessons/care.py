"""Checks of claims about what people and tapes bear: the figures of the care drill."""

from course.lessons.lesson import Answer, Lesson
from exercises.drills.kinds.care_and_safety import limits
from exercises.tape import Rate

AIRS = {"playing": limits.OPERATING, "storing": limits.STORING, "keeping": limits.KEEPING}
FIGURES = {
    "degrees an hour": f"{limits.FASTEST} °C",
    "from magnets": f"{limits.NEAREST} cm",
    "vapour in a day": f"{limits.SHIFT} ppm",
    "vapour in a day, lower": f"{limits.LOWER} ppm",
    "vapour in 15 minutes": f"{limits.SHORT} ppm",
}
HEADS = 2  # on the drum, which turns once for each frame


def care_figure(lesson: Lesson, *, figure: str) -> Answer:
    return FIGURES[figure]


def air(lesson: Lesson, *, of: str, what: str) -> Answer:
    """The warmth or the damp that a tape bears while it is played, stored, or kept long."""
    least, most = getattr(AIRS[of], what)
    return f"{least} to {most} {'°C' if what == 'warmth' else '%'}"


def head_passes(lesson: Lesson, *, minutes: int, rate: str) -> Answer:
    """How often heads pass over the place before which a tape stands still."""
    return f"{round(HEADS * Rate(rate).fraction * 60 * minutes):,} times"
