from course.lessons.shelf import shelf
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS


def test_misconceptions_are_found_by_their_ids() -> None:
    assert {name: belief.id for name, belief in MISCONCEPTIONS.items()} == {
        name: name for name in MISCONCEPTIONS
    }


def test_each_skill_has_misconceptions_and_none_is_of_another() -> None:
    assert {belief.skill for belief in MISCONCEPTIONS.values()} == set(SKILLS)


def test_sentences_are_whole() -> None:
    for name, belief in MISCONCEPTIONS.items():
        for sentence, begins in (
            (belief.learner, "Perhaps you "),
            (belief.instructor, "Believes that "),
        ):
            assert sentence.startswith(begins), name
            assert sentence.endswith("."), name


def test_lesson_says_otherwise() -> None:
    without = [name for name, each in MISCONCEPTIONS.items() if not shelf().find(each.lesson)]

    assert without == []
