from exercises.drills.kinds.spot_the_bad_edit import KIND as SPOT_DESCRIBED
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.mends import Mend, least, ready_before
from exercises.drills.setting.change import BY_WORK, Mode
from exercises.tape import Condition, Tape, play
from tests.exercises.drills.made import made

SEEDS = range(0, 300, 15)


def faulty(seed: int) -> EditsCase:
    """The first case from this seed on that a recording mends."""
    questions = (made(SPOT_DESCRIBED, number) for number in range(seed, seed + 60))
    return next(
        EditsCase.from_json(each.key) for each in questions if each.right["mend"] in BY_WORK
    )


def test_least_mend_leaves_a_film_that_plays_cleanly() -> None:
    for seed in SEEDS:
        case, mode = faulty(seed), least(faulty(seed))

        assert mode is not None, seed
        result = Mend(case, mode).result()
        states = play(result.tape, case.bench)
        inside = [s for s in states if s.end > result.start and s.start < result.end]
        assert {state.state for state in inside} <= {Condition.CLEAN, Condition.NO_PICTURE}, seed
        assert list(result.faults()) == [], seed


def test_no_smaller_mend_works() -> None:
    for seed in SEEDS:
        case, mode = faulty(seed), least(faulty(seed))

        assert mode is not None, seed
        smaller = BY_WORK[: BY_WORK.index(mode)]
        assert [mend for mend in smaller if Mend(case, mend).works()] == [], seed


def test_assemble_begins_at_the_last_place_with_run_up() -> None:
    tape = Tape.blank(3000).with_pass(0, 400, "black").with_pass(400, 500, "black")

    assert ready_before(tape, 450, 150) == 400
    assert ready_before(tape, 400, 150) == 400
    assert ready_before(tape, 200, 150) == 200
    assert ready_before(tape, 2000, 100) == 500
    assert ready_before(tape, 100, 150) == -1


def test_assemble_covers_the_film_from_there_on() -> None:
    case = faulty(0)
    mend = Mend(case, Mode.ASSEMBLE)

    assert mend.start <= case.start
    assert mend.end == case.last.end
