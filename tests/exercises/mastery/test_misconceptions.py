import pytest

from course.lessons.shelf import shelf
from exercises.mastery.misconceptions import MISCONCEPTIONS, Misconception
from exercises.mastery.skills import SKILLS

EACH = pytest.mark.parametrize("belief", MISCONCEPTIONS.values(), ids=MISCONCEPTIONS)


def test_critical_misconceptions_are_those_that_spoil_a_tape() -> None:
    critical = [belief.id for belief in MISCONCEPTIONS.values() if belief.critical]

    assert critical == [
        "insert-lays-pulses",
        "plays-without-pulses",
        "black-is-blank",
        "insert-takes-both",
        "late-is-safer",
        "assemble-ends-clean",
        "assemble-picks-tracks",
        "insert-pushes-along",
        "gap-heals",
        "no-master-run-up",
        "no-source-run-up",
        "touching-takes-share-pulses",
        "pre-roll-makes-run-up",
        "replay-repairs",
        "mend-later",
        "any-tape-plays",
    ]


@EACH
def test_misconception_is_found_by_its_id(belief: Misconception) -> None:
    assert MISCONCEPTIONS[belief.id] is belief


@EACH
def test_misconception_belongs_to_a_skill(belief: Misconception) -> None:
    assert SKILLS[belief.skill].slug == belief.skill


@EACH
def test_sentences_are_whole(belief: Misconception) -> None:
    assert belief.learner.startswith("Perhaps you ")
    assert belief.learner.endswith(".")
    assert belief.instructor.startswith("Believes that ")
    assert belief.instructor.endswith(".")


def test_no_skill_is_without_a_belief() -> None:
    assert {belief.skill for belief in MISCONCEPTIONS.values()} == set(SKILLS)


@EACH
def test_lesson_says_otherwise(belief: Misconception) -> None:
    assert shelf().find(belief.lesson)
