"""How a recording was made, on the tape."""

from exercises.tape import (
    Assemble,
    Bench,
    Carried,
    Drift,
    History,
    Insert,
    Levels,
    Machines,
    Player,
    Rate,
    Recorder,
    SoundLevel,
    SoundMode,
    Source,
    Take,
    Tape,
    record,
)
from exercises.tape.history import PLAINLY

BENCH = Bench(Rate.R25, lock=0, relock=0, erase_gap=0)
BLANK = Tape.blank(1000)
PLAIN = Source("A", (Take(0, 500),))
OFF = Machines(recorder=Recorder(tracking=5))


def made(tape: Tape, frame: int) -> History:
    run = tape.picture.at(frame)
    assert run is not None
    return run.value.made


def test_recording_on_a_well_adjusted_bench_is_made_plainly() -> None:
    tape = record(BLANK, Assemble(PLAIN, 0, 100, 0), BENCH)

    assert made(tape, 0) == PLAINLY == made(BLANK.with_pass(0, 10, "black"), 0)


def test_picture_and_sound_carry_how_they_were_made() -> None:
    carried = Carried(Levels(white=90), chain=(400,))
    source = Source("A", (Take(0, 50), Take(50, 500, carried=carried, sync=True)))
    tape = record(BLANK, Assemble(source, 0, 100, 0, machines=OFF), BENCH)

    assert [run.value.made for run in tape.picture.runs] == [
        History(machines=OFF),
        History(carried, OFF, together=50),
    ]
    assert tape.sound.runs == tape.picture.runs


def test_recordings_made_alike_are_one_run_and_others_stay_two() -> None:
    first = record(BLANK, Assemble(PLAIN, 0, 100, 0, machines=OFF), BENCH)
    alike = Insert(
        PLAIN, 100, 150, 100, True, True, machines=Machines(recorder=Recorder(tracking=5))
    )
    other = Insert(PLAIN, 100, 150, 100, True, True)

    assert len(record(first, alike, BENCH).picture.runs) == 1
    assert len(record(first, other, BENCH).picture.runs) == 2


def test_only_what_wanders_keeps_where_it_began() -> None:
    steady = Machines(Player(tracking=20), sound=SoundLevel(SoundMode.LIMITER, 30))
    drifting = Machines(Player(drift=Drift(1, tracking=5)))
    automatic = Machines(sound=SoundLevel(SoundMode.AUTOMATIC))

    for machines, since in ((steady, None), (drifting, 30), (automatic, 30)):
        tape = record(BLANK, Assemble(PLAIN, 30, 100, 0, machines=machines), BENCH)
        tape = record(tape, Insert(PLAIN, 0, 10, 0, True, True), BENCH)
        assert made(tape, 20).since == since


def test_chain_has_the_recorder_when_it_is_not_as_good_as_the_bench() -> None:
    carried = Carried(chain=(400, 410))

    assert History(carried).chain == (400, 410)
    assert History(carried, Machines(recorder=Recorder(snr=390))).chain == (400, 410, 390)
