from enum import IntEnum


class Severity(IntEnum):
    """The five grades of impairment of ITU-R BT.500, in its words."""

    IMPERCEPTIBLE = 5
    PERCEPTIBLE = 4
    SLIGHTLY_ANNOYING = 3
    ANNOYING = 2
    VERY_ANNOYING = 1

    @property
    def words(self) -> str:
        return WORDS[self]


WORDS = {
    Severity.IMPERCEPTIBLE: "imperceptible",
    Severity.PERCEPTIBLE: "perceptible, but not annoying",
    Severity.SLIGHTLY_ANNOYING: "slightly annoying",
    Severity.ANNOYING: "annoying",
    Severity.VERY_ANNOYING: "very annoying",
}


WORST_FIRST = tuple(sorted(Severity))


def graded(beyond: float, step: float, *, best: Severity = Severity.PERCEPTIBLE) -> Severity:
    """The grade of what is ``beyond`` its limit: one lower for each whole ``step`` of it.

    The steps are this course's own choice, where their users name no source.
    """
    return WORST_FIRST[max(0, best - 1 - int(beyond // step))]
