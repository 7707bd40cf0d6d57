import pytest

from exercises.drills.asks import Choice
from exercises.drills.kinds.spot_the_bad_edit import KIND as SPOT_DESCRIBED
from exercises.drills.question import Question
from exercises.tape import TapeMap
from tests.exercises.drills.made import made


def of_situation(situation: str, mend: str = "") -> Question:
    """The first of it that offers this mend; not all are offered every time."""
    questions = (made(SPOT_DESCRIBED, seed) for seed in range(500))
    return next(
        question
        for question in questions
        if question.situation == situation and (not mend or mend in offered(question))
    )


def offered(question: Question) -> set[str]:
    (mends,) = (ask for ask in question.asks if ask.name == "mend")
    assert isinstance(mends, Choice)
    return {option.value for option in mends.options}


def late() -> Question:
    return of_situation("late-assemble", "later")


def test_each_part_counts_a_third() -> None:
    question = late()
    right = dict(question.right)
    answers = [
        {"fault": "blank", "edit": "tape", "mend": "later"},
        right | {"edit": "tape", "mend": "later"},
        right | {"mend": "later"},
        right,
    ]
    verdicts = [SPOT_DESCRIBED.grade(question, answer) for answer in answers]

    assert [verdict.score for verdict in verdicts] == [0, 33, 67, 100]
    assert [verdict.right for verdict in verdicts] == [False, False, False, True]


@pytest.mark.parametrize(
    ("situation", "part", "answer", "beliefs"),
    [
        ("late-assemble", "fault", "nothing", ("gap-heals",)),
        ("late-assemble", "mend", "leave", ("gap-heals",)),
        ("late-assemble", "mend", "later", ("mend-later",)),
        ("late-assemble", "mend", "tracking", ("replay-repairs",)),
        ("late-assemble", "edit", "tape", ("tape-fault",)),
        ("late-assemble", "mend", "insert-both", ("insert-lays-pulses",)),
        ("insert-at-the-end", "fault", "nothing", ("insert-lays-pulses",)),
        ("sound-past-the-end", "fault", "nothing", ("sound-needs-no-pulses",)),
        ("assemble-in-the-middle", "fault", "nothing", ("assemble-ends-clean",)),
        ("first-frames-next", "fault", "nothing", ("no-source-run-up",)),
        ("first-shot-after-the-joint", "fault", "nothing", ("no-master-run-up",)),
        ("assembled-for-the-picture", "fault", "nothing", ("assemble-picks-tracks",)),
        ("sound-switched-on", "mend", "assemble", ("insert-ends-ragged",)),
        ("shot-for-shot", "edit", "tape", ("tape-fault",)),
        ("late-assemble", "fault", "roll", ()),
    ],
)
def test_wrong_part_reveals_the_belief_behind_it(
    situation: str, part: str, answer: str, beliefs: tuple[str, ...]
) -> None:
    question = of_situation(situation, answer if part == "mend" else "")
    verdict = SPOT_DESCRIBED.grade(question, dict(question.right) | {part: answer})

    assert verdict.misconceptions == beliefs


def test_belief_behind_two_parts_is_named_once() -> None:
    answer = {"fault": "nothing", "edit": "nothing", "mend": "leave"}

    assert SPOT_DESCRIBED.grade(late(), answer).misconceptions == ("gap-heals",)


def test_film_without_a_fault_has_nothing_to_mend() -> None:
    well = of_situation("shot-for-shot")
    feedback = SPOT_DESCRIBED.grade(well, dict(well.right) | {"mend": "assemble"}).feedback

    assert feedback["mends"] == ["There is nothing to mend, and every edit is a risk."]
    assert feedback["mended"] is None


def test_feedback_shows_the_mended_tape_beside_the_faulty_one() -> None:
    feedback = SPOT_DESCRIBED.grade(question := late(), dict(question.right)).feedback
    shown, mended = (TapeMap.from_json(feedback[name]) for name in ("map", "mended"))
    film = shown.marks

    assert [mark.name for mark in film] == ["film in", "film out"]
    inside = [
        fault
        for fault in mended.faults or ()
        if fault.start < film[1].frame and fault.end > film[0].frame
    ]
    assert inside == []
    assert [fault.state for fault in shown.faults or ()][:3] == [
        "no-control",
        "relock",
        "unsettled",
    ]
