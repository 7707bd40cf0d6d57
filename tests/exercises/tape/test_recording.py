"""What each mode leaves on the master, rule by rule, on a bench with round figures."""

import pytest

from exercises.tape import (
    Assemble,
    Bench,
    Edit,
    EditRefused,
    Insert,
    Rate,
    Source,
    Take,
    Tape,
    play,
    record,
)

BENCH = Bench(Rate.R25, lock=100, relock=20, erase_gap=40)
REEL = Source("reel", (Take(0, 500), Take(500, 900, generation=2), Take(1000, 2000)))


@pytest.fixture
def master() -> Tape:
    """A thousand frames, black and pulses on the first 600."""
    return Tape.blank(1000).with_pass(0, 600, "black")


def pulses(tape: Tape) -> list[tuple[int, int]]:
    return [(run.start, run.end) for run in tape.control.runs]


def picture(tape: Tape) -> list[tuple[int, int, str, int, bool]]:
    return [
        (run.start, run.end, run.value.source, run.value.frame, run.value.settled)
        for run in tape.picture.runs
    ]


def settled(tape: Tape, source: str = "reel") -> list[tuple[int, int, bool]]:
    return [(start, end, good) for start, end, name, _, good in picture(tape) if name == source]


def test_assemble_with_run_up_goes_on_in_phase(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 1200, 1300, 600), BENCH)

    assert pulses(edited) == [(0, 700)]
    assert settled(edited) == [(600, 700, True)]
    assert edited.sound.runs == edited.picture.runs


@pytest.mark.parametrize(
    ("run_up", "phases"), [(100, [(0, 200)]), (99, [(0, 99), (99, 199)]), (0, [(0, 100)])]
)
def test_assemble_needs_lock_frames_of_run_up_to_stay_in_phase(
    run_up: int, phases: list[tuple[int, int]]
) -> None:
    master = Tape.blank(1000)
    if run_up:
        master = master.with_pass(0, run_up, "black")

    edited = record(master, Assemble(REEL, 1200, 1300, run_up), BENCH)

    assert pulses(edited) == phases


def test_run_up_counts_from_where_the_phase_began(master: Tape) -> None:
    two_passes = master.with_pass(600, 700, "bars")

    assert [two_passes.run_up(frame) for frame in (0, 1, 600, 601, 700, 701)] == [
        0,
        1,
        600,
        1,
        100,
        0,
    ]


def test_assemble_wipes_the_erase_gap_and_leaves_a_new_phase_behind_it(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 1200, 1300, 200), BENCH, 0)

    assert pulses(edited) == [(0, 300), (340, 600)]
    assert picture(edited)[-1] == (340, 600, "black", 340, True)
    assert edited.run_up(400) == 60
    assert [edited.control.cause(frame) for frame in (199, 200, 339, 340)] == [None, 0, 0, None]


def test_assemble_without_erase_gap_still_ends_the_phase(master: Tape) -> None:
    bench = Bench(Rate.R25, lock=100, relock=20, erase_gap=0)

    edited = record(master, Assemble(REEL, 1200, 1300, 200), bench)

    assert pulses(edited) == [(0, 300), (300, 600)]


def test_erase_gap_is_cut_at_the_end_of_the_tape(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 1200, 1380, 800), BENCH, 5)

    assert pulses(edited) == [(0, 600), (800, 980)]
    assert edited.control.cause(999) == 5
    assert play(edited, BENCH)[-1].end == 1000


def test_insert_lays_only_the_tracks_it_is_told(master: Tape) -> None:
    shot = (REEL, 1200, 1300, 300)

    only_picture = record(master, Insert(*shot, picture=True, sound=False), BENCH, 0)
    only_sound = record(master, Insert(*shot, picture=False, sound=True), BENCH, 0)
    both = record(master, Insert(*shot, picture=True, sound=True), BENCH, 0)

    assert only_picture.sound == only_sound.picture == master.picture
    assert only_picture.picture == only_sound.sound == both.picture == both.sound
    assert only_picture.control == both.control == master.control


def test_insert_on_blank_tape_is_there_but_has_no_pulses(master: Tape) -> None:
    insert = Insert(REEL, 1200, 1300, 700, picture=True, sound=True)

    edited = record(master, insert, BENCH)

    assert pulses(edited) == [(0, 600)]
    assert picture(edited)[-1] == (700, 800, "reel", 1200, False)


def test_source_run_up_that_is_too_short_leaves_frames_unsettled(master: Tape) -> None:
    edited = record(master, Insert(REEL, 1030, 1130, 300, picture=True, sound=False), BENCH)

    assert settled(edited) == [(300, 370, False), (370, 400, True)]


def test_master_run_up_that_is_too_short_leaves_frames_unsettled(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 1200, 1300, 60), BENCH)

    assert settled(edited) == [(60, 100, False), (100, 160, True)]


def test_shorter_run_up_decides(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 1010, 1150, 60), BENCH)

    assert settled(edited) == [(60, 150, False), (150, 200, True)]


def test_take_that_begins_inside_is_unsettled_for_relock_frames(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 450, 550, 200), BENCH)

    assert settled(edited) == [(200, 250, True), (250, 270, False), (270, 300, True)]
    assert [run.value.generation for run in edited.picture.runs[1:4]] == [2, 3, 3]


def test_take_that_begins_near_the_end_is_unsettled_to_the_end(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 450, 510, 200), BENCH)

    assert settled(edited) == [(200, 250, True), (250, 260, False)]


def test_blank_source_lays_nothing_over_what_was_there(master: Tape) -> None:
    edited = record(master, Insert(REEL, 850, 1050, 300, picture=True, sound=False), BENCH, 3)

    assert picture(edited) == [
        (0, 300, "black", 0, True),
        (300, 350, "reel", 850, True),
        (450, 470, "reel", 1000, False),
        (470, 500, "reel", 1020, True),
        (500, 600, "black", 500, True),
    ]
    assert [edited.picture.cause(frame) for frame in (299, 300, 400, 499, 500)] == [
        None,
        3,
        3,
        3,
        None,
    ]


def test_assemble_of_blank_source_still_lays_pulses(master: Tape) -> None:
    edited = record(master, Assemble(REEL, 2100, 2200, 600), BENCH)

    assert pulses(edited) == [(0, 700)]
    assert edited.picture.runs == master.picture.runs


def test_recording_the_next_frames_makes_one_run(master: Tape) -> None:
    once = record(master, Assemble(REEL, 1200, 1300, 600), BENCH, 0)

    twice = record(once, Assemble(REEL, 1300, 1400, 700), BENCH, 1)

    assert settled(twice) == [(600, 800, True)]
    assert [twice.picture.cause(frame) for frame in (699, 700)] == [0, 1]


def test_tape_from_before_the_edit_stays_usable(master: Tape) -> None:
    before = play(master, BENCH)

    assembled = record(master, Assemble(REEL, 1200, 1300, 300), BENCH)
    inserted = record(master, Insert(REEL, 1200, 1300, 300, picture=True, sound=True), BENCH)

    assert play(master, BENCH) == before
    assert assembled.picture != inserted.picture
    assert master == Tape.blank(1000).with_pass(0, 600, "black")


@pytest.mark.parametrize(
    ("edit", "sentence"),
    [
        (Assemble(REEL, 300, 300, 0), "The edit in (300) must come before the edit out (300)."),
        (Assemble(REEL, -1, 300, 0), "The edit in (-1) must come before the edit out (300)."),
        (
            Assemble(REEL, 0, 101, 900),
            "The recording from 900 to 1001 does not fit a tape of 1000.",
        ),
        (Assemble(REEL, 0, 100, -1), "The recording from -1 to 99 does not fit a tape of 1000."),
        (
            Insert(REEL, 0, 100, 0, picture=False, sound=False),
            "An insert records at least one of picture and sound; this one records nothing.",
        ),
    ],
)
def test_edit_that_can_not_be_made_is_refused(master: Tape, edit: Edit, sentence: str) -> None:
    with pytest.raises(EditRefused) as refusal:
        record(master, edit, BENCH)

    assert str(refusal.value) == sentence


@pytest.mark.parametrize(("start", "end"), [(-1, 5), (5, 5), (6, 5), (0, 1001)])
def test_pass_that_does_not_fit_is_refused(start: int, end: int) -> None:
    with pytest.raises(EditRefused):
        Tape.blank(1000).with_pass(start, end, "black")


@pytest.mark.parametrize("takes", [(Take(5, 10), Take(9, 20)), (Take(5, 5),), (Take(-1, 5),)])
def test_takes_out_of_order_are_refused(takes: tuple[Take, ...]) -> None:
    with pytest.raises(ValueError, match="not in order"):
        Source("reel", takes)
