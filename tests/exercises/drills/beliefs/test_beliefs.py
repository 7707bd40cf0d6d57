"""Altered rules against hand-made cases: what a believer expects the tape to be."""

import pytest

from exercises.drills.beliefs import BELIEFS, Trial, as_played, recorded
from exercises.drills.setting.change import Change, Mode
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import (
    SIDES,
    Assemble,
    Bench,
    Condition,
    Insert,
    Rate,
    Side,
    Source,
    Take,
    Tape,
    play,
    record,
)

BENCH = Bench.default(Rate.R29_97)
SHOTS = Source("Tape 1", (Take(0, 6000),))
BLACK = Tape.blank(6000).with_pass(0, 3000, "black")
TOUCHING = Source("Tape 2", (Take(0, 2000), Take(2000, 6000)))
FILM = record(BLACK, Assemble(SHOTS, 300, 900, 600), BENCH)


def trial(
    mode: Mode,
    at: int,
    *,
    master: Tape = FILM,
    in_: int = 2000,
    frames: int = 300,
    tracks: tuple[Side, ...] = SIDES,
    source: Source = SHOTS,
    spare: int = 0,
) -> Trial:
    change = Change(source=source, in_=in_, out=in_ + frames, at=at, tracks=tracks)
    return Trial(master, change, mode, BENCH, spare)


def states(tape: Tape, start: int, end: int) -> set[Condition]:
    """What playback shows between two frames."""
    return {s.state for s in play(tape, BENCH) if s.end > start and s.start < end}


# Each belief where it makes a difference: the attempt, and a stretch that a believer
# expects to play cleanly and that does not.
WHERE = {
    "sound-needs-no-pulses": (trial(Mode.INSERT_SOUND, 4000), 4000, 4300),
    "insert-lays-pulses": (trial(Mode.INSERT_BOTH, 1200), 1200, 1290),
    "assemble-ends-clean": (trial(Mode.ASSEMBLE, 800), 1100, 1200),
    "gap-heals": (trial(Mode.ASSEMBLE, 1220), 1000, 1520),
    "touching-takes-share-pulses": (
        trial(Mode.INSERT_BOTH, 800, source=TOUCHING, in_=2020),
        800,
        1100,
    ),
    "pre-roll-makes-run-up": (trial(Mode.ASSEMBLE, 60, spare=90), 60, 360),
    "late-is-safer": (trial(Mode.ASSEMBLE, 1205), 1205, 1505),
    "no-source-run-up": (trial(Mode.INSERT_BOTH, 800, in_=20), 800, 1100),
    "no-master-run-up": (trial(Mode.ASSEMBLE, 60), 60, 360),
    "plays-without-pulses": (trial(Mode.INSERT_BOTH, 4000), 4000, 4300),
}


@pytest.mark.parametrize("belief", WHERE)
def test_believer_expects_what_does_not_play_to_play(belief: str) -> None:
    tried, start, end = WHERE[belief]

    assert states(recorded(tried), start, end) != {Condition.CLEAN}
    expected = states(as_played(recorded(tried, (belief,)), BENCH, (belief,)), start, end)
    assert expected - {Condition.NO_PICTURE} == (
        set() if belief == "sound-needs-no-pulses" else {Condition.CLEAN}
    )


def test_picked_track_stays() -> None:
    tried = trial(Mode.ASSEMBLE, 900, tracks=("picture",))
    at_900 = recorded(tried, ("assemble-picks-tracks",)).sound.at(900)

    assert recorded(tried).sound.at(900) != FILM.sound.at(900)
    assert at_900 is not None
    assert at_900.tail(900).value.frame == 600


def test_pushed_frames_come_later() -> None:
    tried = trial(Mode.INSERT_BOTH, 900)
    pushed = recorded(tried, ("insert-pushes-along",))
    before, after = FILM.picture.at(1000), pushed.picture.at(1300)

    assert before is not None
    assert after is not None
    assert after.tail(1300).value == before.tail(1000).value


def test_ragged_end_spoils_what_follows() -> None:
    tried = trial(Mode.INSERT_PICTURE, 800)

    assert states(recorded(tried), 1100, 1130) == {Condition.CLEAN}
    assert states(recorded(tried, ("insert-ends-ragged",)), 1100, 1130) == {Condition.UNSETTLED}


def test_edit_across_takes_that_touch_is_expected_not_to_roll() -> None:
    tried = trial(Mode.INSERT_BOTH, 800, source=TOUCHING, in_=1900)

    assert states(recorded(tried), 900, 930) == {Condition.UNSETTLED}
    assert states(recorded(tried, ("touching-takes-share-pulses",)), 800, 1100) == {Condition.CLEAN}


def test_pre_roll_makes_up_for_as_much_as_it_is_longer() -> None:
    """A second of run-up on the edit master, five wanted, and a pre-roll of seven."""
    tried = trial(Mode.INSERT_BOTH, 30, spare=60)
    shown = play(recorded(tried, ("pre-roll-makes-run-up",)), BENCH)
    unsteady = [each for each in shown if each.state is Condition.UNSETTLED]

    assert [(each.start, each.end) for each in unsteady] == [(30, 90)]


def test_black_is_expected_to_hold_nothing() -> None:
    prepared = Tape.blank(6000).with_pass(0, 6000, "black")
    tried = trial(Mode.INSERT_BOTH, 900, master=prepared)
    expected = recorded(tried, ("black-is-blank",))

    assert states(recorded(tried), 900, 1200) == {Condition.CLEAN}
    assert states(expected, 0, 6000) == {Condition.NO_CONTROL}


def test_black_under_a_film_is_film() -> None:
    prepared = Tape.blank(6000).with_pass(0, 6000, "black")
    film = record(prepared, Insert(SHOTS, 300, 900, 600, picture=True, sound=False), BENCH)
    tried = trial(Mode.INSERT_SOUND, 800, master=film)

    assert states(recorded(tried, ("black-is-blank",)), 630, 1200) == {Condition.CLEAN}


def test_insert_of_one_track_is_expected_to_take_the_other() -> None:
    tried = trial(Mode.INSERT_PICTURE, 800)
    expected = recorded(tried, ("insert-takes-both",))

    assert recorded(tried).sound == FILM.sound
    assert expected == recorded(trial(Mode.INSERT_BOTH, 800))


def test_frame_at_the_edit_out_is_expected_too() -> None:
    tried = trial(Mode.INSERT_BOTH, 800)
    expected = recorded(tried, ("out-is-last-frame",))

    assert expected == recorded(trial(Mode.INSERT_BOTH, 800, frames=301))


def test_recording_that_ends_with_the_tape_is_no_longer_for_anybody() -> None:
    tried = trial(Mode.ASSEMBLE, 5700)

    assert recorded(tried, ("out-is-last-frame",)) == recorded(tried)


def test_early_mark_is_expected_to_spoil_the_joint() -> None:
    tried = trial(Mode.ASSEMBLE, 1195)

    assert states(recorded(tried), 1000, 1495) == {Condition.CLEAN}
    expected = recorded(tried, ("late-is-safer",))
    assert states(expected, 1195, 1225) == {Condition.UNSETTLED}
    assert states(expected, 1225, 1495) == {Condition.CLEAN}


def test_hole_after_a_late_mark_is_expected_to_stay_and_to_do_no_harm() -> None:
    """Unlike somebody who expects it to close."""
    tried = trial(Mode.ASSEMBLE, 1205)

    assert states(recorded(tried, ("late-is-safer",)), 1200, 1205) == {Condition.NO_PICTURE}
    assert states(recorded(tried, ("gap-heals",)), 1200, 1205) == {Condition.CLEAN}


@pytest.mark.parametrize("mode", Mode)
def test_no_belief_is_the_true_model(mode: Mode) -> None:
    tried = trial(mode, 800)

    assert recorded(tried) == record(FILM, tried.edit, BENCH)


@pytest.mark.parametrize("belief", BELIEFS)
def test_belief_is_a_known_misconception(belief: str) -> None:
    assert MISCONCEPTIONS[belief].id == belief


@pytest.mark.parametrize("belief", BELIEFS)
def test_belief_changes_nothing_in_modes_that_it_does_not_concern(belief: str) -> None:
    for mode in set(Mode) - set(BELIEFS[belief].modes):
        tried = trial(mode, 1200)
        assert recorded(tried, (belief,)) == recorded(tried)
