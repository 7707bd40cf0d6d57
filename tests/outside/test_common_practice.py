"""What the trade takes for granted about two machines. No standard says it: common practice."""

from hypothesis import given

from exercises.tape import (
    Assemble,
    Bench,
    Condition,
    Rate,
    Source,
    Take,
    Tape,
    play,
    read_edit_session,
    record,
)
from tests.strategies import Document, documents


def test_ten_seconds_before_anything_that_matters_are_enough_run_up() -> None:
    """Common practice: start the camera 10 s before anything that matters. Any machine that
    needs 5 to 10 s of pre-roll is then locked, even at a take's first usable frame.
    """
    for rate in Rate:
        second = rate.nominal
        for pre_roll in range(5, 11):
            bench = Bench(rate, lock=pre_roll * second, relock=second, erase_gap=2 * second)
            take = Source("Tape 3", (Take(0, 60 * second),))
            tape = Tape.blank(60 * second).with_pass(0, 30 * second, "black")

            tape = record(tape, Assemble(take, 10 * second, 20 * second, 20 * second), bench)

            states = [state.state for state in play(tape, bench) if state.end <= 30 * second]
            assert states == [Condition.RELOCK, Condition.CLEAN]


def test_pre_roll_is_five_to_ten_seconds() -> None:
    """Common practice: 5 s, from 3 to 10. P. Ward's camerawork handbook (Focal Press, ISBN
    0-240-51604-2), “Editing requirements: run-up time”, asks for at least 6 s of stable
    picture.
    """
    for rate in Rate:
        assert 5 * rate.nominal <= Bench.default(rate).lock <= 10 * rate.nominal


@given(documents())
def test_cut_is_all_that_two_machines_can_do(document: Document) -> None:
    """Common practice: a fade or a dissolve needs two pictures at once, and so a third machine.
    Here, whatever is recorded, a frame has one picture and one sound, or none.
    """
    tape = read_edit_session(document).recorded()

    for track in (tape.picture, tape.sound):
        for frame in range(tape.length):
            assert sum(run.start <= frame < run.end for run in track.runs) <= 1
