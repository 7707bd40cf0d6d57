import pytest

from course.lessons.shelf import lesson_place, shelf
from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.care_and_safety import rules as care_rules
from exercises.mastery.skills import SKILLS

RULES = {
    name: rule
    for name, rule in {**vars(rules), **vars(care_rules)}.items()
    if isinstance(rule, Rule)
}
EACH_RULE = pytest.mark.parametrize("rule", RULES.values(), ids=RULES)


@EACH_RULE
def test_rule_belongs_to_a_skill(rule: Rule) -> None:
    assert SKILLS[rule.skill].slug == rule.skill


TAUGHT = {name: rule for name, rule in RULES.items() if rule.lesson}


@pytest.mark.parametrize("rule", TAUGHT.values(), ids=TAUGHT)
def test_rule_is_taught_at_its_place(rule: Rule) -> None:
    lesson = shelf().find(rule.lesson)

    assert lesson is not None
    assert [section.id for section in lesson.sections].count(rule.section) == 1


@EACH_RULE
def test_rule_without_a_lesson_has_no_place(rule: Rule) -> None:
    assert rule.lesson or (rule.section == "" and lesson_place(rule.lesson, rule.section) is None)
