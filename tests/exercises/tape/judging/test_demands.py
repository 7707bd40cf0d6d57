from typing import Any

import pytest

from exercises.tape import Assemble, Bench, Insert, Rate, Source, Take, Tape, record
from exercises.tape.judging import Demand, Miss, Trouble, met, misses, playing

BENCH = Bench.default(Rate.R29_97)
SHOTS = Source("Tape 1", (Take(0, 3000),))
BLACK = Tape.blank(3000).with_pass(0, 2000, "black")


def want(start: int, end: int, source: str, frame: int, **more: Any) -> Demand:
    return Demand.over("picture", start, end, source, frame, **more)


def trouble(tape: Tape, wanted: Demand) -> list[tuple[Trouble, int, int]]:
    return [(miss.trouble, miss.start, miss.end) for miss in misses([wanted], tape, BENCH)]


def test_what_plays_is_given() -> None:
    assert met([want(30, 2000, "black", 30)], BLACK, BENCH)


def test_first_second_of_a_phase_rolls() -> None:
    assert trouble(BLACK, want(0, 40, "black", 0)) == [(Trouble.ROLL, 0, 30)]


def test_what_rolls_already_may_roll_on() -> None:
    assert trouble(BLACK, want(0, 30, "black", 0, rolls=True)) == []


def test_frames_past_the_pulses_are_missing() -> None:
    assert trouble(BLACK, want(1990, 2010, "black", 1990)) == [(Trouble.NO_PULSES, 2000, 2010)]


def test_other_frames_of_the_same_source_are_not_what_was_wanted() -> None:
    assert trouble(BLACK, want(100, 110, "black", 99)) == [(Trouble.OTHER, 100, 110)]


def test_unsettled_copy_is_not_what_was_wanted() -> None:
    tape = record(BLACK, Insert(SHOTS, 100, 400, 500, picture=True, sound=False), BENCH)

    assert trouble(tape, want(500, 800, "Tape 1", 100)) == [(Trouble.UNSETTLED, 500, 550)]


def test_pulses_without_picture_are_blank() -> None:
    gap = Source("Tape 1", (Take(0, 200), Take(400, 3000)))
    tape = record(BLACK, Insert(gap, 190, 220, 500, picture=True, sound=False), BENCH)

    assert trouble(tape, want(510, 530, "Tape 1", 200)) == [(Trouble.BLANK, 510, 530)]


def test_mix_is_never_given() -> None:
    assert trouble(BLACK, want(100, 130, "black", 100, mixed=True)) == [(Trouble.CUT, 100, 130)]


def test_troubles_of_one_want_follow_one_another() -> None:
    tape = record(BLACK, Assemble(SHOTS, 300, 600, 1000), BENCH)

    assert trouble(tape, want(900, 1500, "black", 900)) == [
        (Trouble.OTHER, 1000, 1300),
        (Trouble.NO_PULSES, 1300, 1360),
        (Trouble.ROLL, 1360, 1390),
    ]


@pytest.mark.parametrize("track", ["picture", "sound"])
def test_tape_gives_all_that_plays_on_it(track: Any) -> None:
    tape = record(BLACK, Assemble(SHOTS, 300, 600, 1000), BENCH)
    wants = list(playing(tape, BENCH, track))

    assert [(w.at, w.end, w.source, w.rolls) for w in wants] == [
        (0, 30, "black", True),
        (30, 1000, "black", False),
        (1000, 1300, "Tape 1", False),
        (1360, 1390, "black", True),
        (1390, 2000, "black", False),
    ]
    assert met(wants, tape, BENCH)


def test_want_survives_storing() -> None:
    wanted = want(0, 30, "black", 0, rolls=True, moved=12)

    assert Demand.from_json(wanted.as_json()) == wanted
    assert list(misses([wanted], Tape.blank(60), BENCH)) == [Miss(wanted, Trouble.NO_PULSES, 0, 30)]
