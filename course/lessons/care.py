"""Checks of claims about what people and tapes bear: the figures of the care drill."""

from course.lessons.lesson import Answer, Lesson
from exercises.drills.care import climate, people, tapes

AIRS = {"playing": climate.OPERATING, "storing": climate.STORING, "keeping": climate.KEEPING}
FIGURES = {
    "degrees an hour": f"{climate.FASTEST} °C",
    "from magnets": f"{tapes.NEAREST} cm",
    "vapour in a day": f"{people.SHIFT} ppm",
    "vapour in 15 minutes": f"{people.SHORT} ppm",
}


def care_figure(lesson: Lesson, *, figure: str) -> Answer:
    return FIGURES[figure]


def air(lesson: Lesson, *, of: str, what: str) -> Answer:
    """The warmth or the damp that a tape bears while it is played, stored, or kept long."""
    least, most = getattr(AIRS[of], what)
    return f"{least} to {most} {'°C' if what == 'warmth' else '%'}"


def warming_time(lesson: Lesson, *, begins: int, ends: int) -> Answer:
    """How long a tape must lie to come from one temperature to another, in °C."""
    return climate.clock(60 * (ends - begins) // climate.FASTEST)
