from exercises.mastery.skills import SKILLS


def test_skills_are_those_of_the_trade_in_teaching_order() -> None:
    assert [skill.title for skill in SKILLS.values()] == [
        "What a copy is",
        "Tracks and pulses",
        "Continuing an edit master",
        "Replacing inside it",
        "Run-up",
        "Player set-up",
        "Recorder set-up",
        "Picture level",
        "Sound level",
        "Seeing a bad edit",
        "Hearing a bad edit",
        "Mending",
        "Planning and time code",
        "What the bench can’t do",
        "Care and safety",
    ]


def test_skill_is_found_by_its_slug() -> None:
    assert {slug: skill.slug for slug, skill in SKILLS.items()} == {slug: slug for slug in SKILLS}
