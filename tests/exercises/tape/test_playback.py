"""Which state a frame is in, and which edit is why."""

from exercises.tape import Assemble, Bench, Insert, Rate, Source, Take, Tape, play, record

BENCH = Bench(Rate.R25, lock=100, relock=20, erase_gap=40)
REEL = Source("reel", (Take(0, 500), Take(600, 2000)))


def states(tape: Tape) -> list[tuple[int, int, str, int | None]]:
    return [(start, end, str(state), edit) for start, end, state, edit in play(tape, BENCH)]


def test_blank_tape_has_no_control() -> None:
    assert states(Tape.blank(50)) == [(0, 50, "no-control", None)]


def test_phase_shorter_than_relock_never_settles() -> None:
    tape = Tape.blank(50).with_pass(0, 10, "black").with_pass(10, 50, "bars")

    assert states(tape) == [(0, 30, "relock", None), (30, 50, "clean", None)]


def test_no_control_is_worse_than_all_else_and_names_the_edit_that_wiped() -> None:
    tape = Tape.blank(400).with_pass(0, 400, "black")
    tape = record(tape, Assemble(REEL, 700, 800, 150), BENCH, 0)
    tape = record(tape, Insert(REEL, 700, 800, 240, picture=True, sound=True), BENCH, 1)

    assert states(tape) == [
        (0, 20, "relock", None),
        (20, 250, "clean", None),
        (250, 290, "no-control", 0),
        (290, 310, "relock", None),
        (310, 400, "clean", None),
    ]


def test_picture_is_worse_than_sound() -> None:
    tape = Tape.blank(400).with_pass(0, 400, "black")
    tape = record(tape, Insert(REEL, 450, 550, 100, picture=True, sound=True), BENCH, 0)
    tape = record(tape, Insert(REEL, 450, 550, 180, picture=False, sound=True), BENCH, 1)

    assert states(tape) == [
        (0, 20, "relock", None),
        (20, 150, "clean", None),
        (150, 200, "no-picture", 0),
        (200, 230, "clean", None),
        (230, 280, "no-sound", 1),
        (280, 400, "clean", None),
    ]


def test_unsettled_sound_under_a_settled_picture_names_the_sound_edit() -> None:
    tape = Tape.blank(400).with_pass(0, 400, "black")
    tape = record(tape, Insert(REEL, 630, 730, 200, picture=True, sound=True), BENCH, 0)
    tape = record(tape, Insert(REEL, 800, 900, 200, picture=True, sound=False), BENCH, 1)

    assert states(tape) == [
        (0, 20, "relock", None),
        (20, 200, "clean", None),
        (200, 270, "unsettled-sound", 0),
        (270, 400, "clean", None),
    ]


def test_neighbours_in_the_same_state_differ_in_edit() -> None:
    tape = Tape.blank(300)
    for index, at in enumerate((0, 50, 200)):
        tape = record(tape, Insert(REEL, 0, 50, at, picture=True, sound=False), BENCH, index)
    tape = record(tape, Assemble(REEL, 550, 560, 100), BENCH, 3)

    assert states(tape) == [
        (0, 100, "no-control", None),
        (100, 110, "relock", 3),
        (110, 150, "no-control", 3),
        (150, 300, "no-control", None),
    ]
