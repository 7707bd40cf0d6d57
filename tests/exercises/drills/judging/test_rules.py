from course.lessons.shelf import shelf
from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.care_and_safety import rules as care_rules
from exercises.mastery.skills import SKILLS

RULES = {
    name: rule
    for name, rule in {**vars(rules), **vars(care_rules)}.items()
    if isinstance(rule, Rule)
}


def test_rules_belong_to_skills() -> None:
    assert len(RULES) > 20
    assert [name for name, rule in RULES.items() if rule.skill not in SKILLS] == []


def test_rule_is_taught_at_its_place() -> None:
    """Or nowhere: what no lesson teaches names no section."""
    for name, rule in RULES.items():
        lesson = shelf().find(rule.lesson) if rule.lesson else None
        sections = [section.id for section in lesson.sections] if lesson else [""]

        assert bool(lesson) is bool(rule.lesson), name
        assert sections.count(rule.section) == 1, name
