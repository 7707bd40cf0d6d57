"""What comes next: the course's order, and what was answered so far."""

from exercises.mastery.next_step import DrillState, NextStep, next_step

LESSON = "assemble-and-insert"


def course(*rights: tuple[bool, ...]) -> list[tuple[str, list[DrillState]]]:
    drills = [
        DrillState(slug=f"drill-{n}", title=f"Drill {n}", lesson=LESSON, rights=each)
        for n, each in enumerate(rights)
    ]
    return [("what-an-edit-is", []), (LESSON, drills)]


def place(step: NextStep | None) -> tuple[str, str] | None:
    return (step.what, step.slug) if step else None


def test_next_step_of_a_beginner_is_the_first_lesson() -> None:
    step = next_step(course((), ()))

    assert place(step) == ("lesson", "what-an-edit-is")
    assert step is not None
    assert step.why == "The course begins here."


def test_next_step_untried_drill_leads_to_its_lesson() -> None:
    assert place(next_step(course((), ()), {"what-an-edit-is"})) == ("lesson", LESSON)


def test_next_step_untried_drill_of_a_lesson_that_was_read_is_the_drill() -> None:
    step = next_step(course((), ()), {"what-an-edit-is", LESSON})

    assert place(step) == ("drill", "drill-0")
    assert step is not None
    assert step.why == "You have read the lesson that teaches it, and have not tried it yet."


def test_next_step_passes_over_a_lesson_before_what_was_practised() -> None:
    assert place(next_step(course((True,), ()))) == ("drill", "drill-0")


def test_next_step_is_a_lesson_without_drills_in_its_turn() -> None:
    later = [*course((True, True, True)), ("finishing", []), ("", [])]

    assert place(next_step(later)) == ("lesson", "finishing")
    assert place(next_step(later, {"finishing"})) == ("drill", "drill-0")


def test_next_step_after_a_wrong_answer_is_the_drill() -> None:
    step = next_step(course((False, True), ()))

    assert place(step) == ("drill", "drill-0")
    assert step is not None
    assert step.why == "Your last answer here was not right yet."


def test_next_step_counts_what_is_left_to_complete() -> None:
    step = next_step(course((True, False), ()))

    assert step is not None
    assert step.why == "Not held yet: 2 more right without a miss."


def test_next_step_passes_over_a_completed_drill() -> None:
    assert place(next_step(course((False, True, True, True), (True,)))) == ("drill", "drill-1")


def test_next_step_when_all_is_complete_is_the_least_practised() -> None:
    done = (True, True, True)

    assert place(next_step(course((*done, True), done))) == ("drill", "drill-1")


def test_next_step_without_drills_is_the_first_lesson() -> None:
    assert place(next_step([("what-an-edit-is", [])])) == ("lesson", "what-an-edit-is")


def test_next_step_of_an_empty_course_is_none() -> None:
    assert next_step([]) is None


def test_next_step_is_what_went_wrong_before_what_is_new() -> None:
    assert place(next_step(course((), (False,)))) == ("drill", "drill-1")


def test_next_step_of_a_drill_that_no_lesson_teaches_is_the_drill() -> None:
    drill = DrillState(slug="sums", title="Sums", lesson="")

    assert place(next_step([("", [drill])])) == ("drill", "sums")
