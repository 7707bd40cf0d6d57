"""From a tape's facts to a look."""

from math import inf

import pytest

from exercises.signal.lines import Lines
from exercises.signal.picture.look import Look
from exercises.signal.picture.seeing import Seeing, Seen
from exercises.tape import (
    Assemble,
    Bench,
    Carried,
    Drift,
    Insert,
    Levels,
    Machines,
    Player,
    Rate,
    Recorder,
    Source,
    Take,
    Tape,
    record,
)
from exercises.tape.drift import adjustments
from exercises.tape.noise import equal_copies_snr

BENCH = Bench.default(Rate.R29_97)
SHOTS = Source("A", (Take(0, 1500),))
PREPARED = Tape.blank(3000).with_pass(0, 2000, "black")


WELL = Machines()


def inserted(machines: Machines = WELL, *, source: Source = SHOTS, tape: Tape = PREPARED) -> Seeing:
    edit = Insert(source, 300, 600, 900, picture=True, sound=True, machines=machines)
    return Seeing(record(tape, edit, BENCH, 0), BENCH)


def test_well_made_copy_has_its_noise_and_its_generation() -> None:
    assert inserted().at(1000) == Seen(
        "A", 400, Look(lines=Lines.L525, snr=equal_copies_snr(46, 2), copies=2)
    )


def test_picture_without_pulses_slides_through_the_screen_and_is_no_snow() -> None:
    """Nothing locks, and what is there is seen all the same (common practice)."""
    laid = Insert(SHOTS, 300, 600, 1900, picture=True, sound=True)
    seeing = Seeing(record(PREPARED, laid, BENCH, 0), BENCH)
    slid = [seeing.at(frame).look.adrift for frame in (1999, 2010, 2085, 2160)]

    assert slid == [None, pytest.approx(60 / 150), pytest.approx(135 / 150), pytest.approx(0.4)]
    assert seeing.at(2010).source == "A"
    assert not seeing.at(2010).look.blank
    assert seeing.at(2200).look.blank


def test_tape_without_picture_is_snow() -> None:
    seeing = Seeing(record(PREPARED, Assemble(SHOTS, 300, 450, 900), BENCH, 0), BENCH)
    snow = Seen(None, 0, Look(lines=Lines.L525, blank=True))

    assert [seeing.at(frame) for frame in (1051, 2500)] == [snow, snow]


def test_machine_locks_while_relock_runs_from_where_the_pulses_begin() -> None:
    seeing = Seeing(PREPARED, BENCH)
    settling = [seeing.at(frame).look.settling for frame in (0, 15, 29, 30)]

    assert settling == [0.0, 0.5, pytest.approx(29 / 30), None]


def test_shot_copied_before_the_machines_locked_stays_unsettled() -> None:
    short = Source("A", (Take(280, 1500),))
    seeing = inserted(source=short)
    settling = [seeing.at(frame).look.settling for frame in (899, 900, 965, 1029, 1030)]

    assert settling == [None, 0.0, 0.5, pytest.approx(129 / 130), None]


def test_players_adjustment_is_recorded_into_the_copy() -> None:
    look = inserted(Machines(Player(tracking=-62, skew=25))).at(950).look

    assert (look.tracking, look.skew) == (-62, 2.5)


def test_wandering_adjustment_is_that_of_its_second() -> None:
    player = Player(tracking=20, skew=5, drift=Drift(3, 9, 4))
    seeing = inserted(Machines(player))
    stood = adjustments(player, 300, Rate.R29_97)
    looks = [seeing.at(900 + 30 * second + 29).look for second in range(10)]

    assert [look.tracking for look in looks] == [each.tracking for each in stood]
    assert [look.skew for look in looks] == [each.skew / 10 for each in stood]


@pytest.mark.parametrize(
    ("white", "gain", "decibels"),
    [
        (100, -45, -4.5),
        (100, None, 0.0),
        (80, None, 1.94),
        (30, None, 6.0),
        (0, None, 6.0),
    ],
)
def test_levels_are_the_sources_and_the_knobs(
    white: int, gain: int | None, decibels: float
) -> None:
    take = Take(0, 1500, carried=Carried(Levels(white=white)))
    look = inserted(Machines(picture_gain=gain), source=Source("A", (take,))).at(950).look

    assert look.source == white
    assert look.gain == pytest.approx(decibels, abs=0.005)


def test_black_has_no_level_to_be_wrong() -> None:
    look = Seeing(PREPARED, BENCH).at(500).look

    assert (look.source, look.gain, look.copies) == (100, 0, 1)


def test_picture_that_was_never_on_tape_has_no_noise() -> None:
    seeing = Seeing(Tape.blank(100).with_pass(0, 100, "A", 0), BENCH)

    assert (seeing.at(60).look.snr, seeing.at(60).look.copies) == (inf, 0)


def test_recorder_off_its_position_is_seen_when_the_tape_is_played() -> None:
    look = inserted(Machines(Player(tracking=8), Recorder(tracking=-30))).at(950).look

    assert look.tracking == -30


def test_picture_is_disturbed_where_another_recorder_begins() -> None:
    seeing = inserted(Machines(recorder=Recorder("second")))
    settling = [seeing.at(frame).look.settling for frame in (899, 900, 906, 912)]

    assert settling == [None, 0.6, pytest.approx(0.8), None]
