from exercises.tape import Assemble, Bench, Insert, Rate, Source, Take, Tape, passages, play, record
from exercises.tape.playback import condition_of
from exercises.tape.tape import Side

PICTURE_ALONE: tuple[Side, ...] = ("picture",)
BENCH = Bench.default(Rate.R25)
SHOTS = Source("Tape 1", (Take(0, 3000),))
BLACK = Tape.blank(2000).with_pass(0, 1000, "black")


def edges(tape: Tape, *window: int, **more: object) -> list[tuple[int, int]]:
    return [each[:2] for each in passages(tape, *window, relock=BENCH.relock, **more)]  # type: ignore[arg-type]


def test_tape_is_cut_where_pulses_begin_are_steady_and_end() -> None:
    assert edges(BLACK) == [(0, 25), (25, 1000), (1000, 2000)]


def test_tape_is_cut_where_one_side_goes_over_into_another_recording() -> None:
    tape = record(BLACK, Insert(SHOTS, 300, 400, 500, picture=False, sound=True), BENCH)

    assert edges(tape, 400, 700) == [(400, 500), (500, 600), (600, 700)]
    assert edges(tape, 400, 700, sides=PICTURE_ALONE) == [(400, 700)]


def test_side_that_is_not_asked_for_is_as_blank() -> None:
    (passage,) = passages(BLACK, 400, 700, relock=BENCH.relock, sides=PICTURE_ALONE)

    assert passage.picture is not None
    assert passage.sound is None


def test_pulses_that_end_before_they_are_steady_roll_to_their_end() -> None:
    tape = Tape.blank(100).with_pass(0, 10, "black")

    assert [(each.start, each.end, each.rolls) for each in passages(tape, relock=25)] == [
        (0, 10, True),
        (10, 100, False),
    ]


def test_cuts_that_are_also_asked_for_count_within_the_range() -> None:
    assert edges(BLACK, 100, 200, also=(50, 150, 250)) == [(100, 150), (150, 200)]


def test_passage_holds_each_side_from_its_own_first_frame_on() -> None:
    *_, last = passages(BLACK, 100, 200, relock=BENCH.relock, also=(150,))

    laid = last.laid("picture")
    assert laid is not None
    assert laid.frame == 150


def test_playback_is_what_each_passage_shows() -> None:
    tape = record(BLACK, Assemble(SHOTS, 300, 600, 400), BENCH)

    for passage in passages(tape, relock=BENCH.relock):
        shown = [each.state for each in play(tape, BENCH) if each.start <= passage.start < each.end]
        assert shown == [condition_of(passage)]
