"""Altered rules against hand-made cases: what a believer expects the tape to be."""

import pytest

from exercises.drills.beliefs import BELIEFS, Attempt, as_played, recorded
from exercises.drills.change import Change, Mode
from exercises.drills.wants import SIDES, Side
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import Assemble, Bench, Condition, Rate, Source, Take, Tape, play, record

BENCH = Bench.default(Rate.R29_97)
SHOTS = Source("Tape 1", (Take(0, 6000),))
BLACK = Tape.blank(6000).with_pass(0, 3000, "black")
FILM = record(BLACK, Assemble(SHOTS, 300, 900, 600), BENCH)


def attempt(
    mode: Mode,
    at: int,
    *,
    master: Tape = FILM,
    in_: int = 2000,
    frames: int = 300,
    tracks: tuple[Side, ...] = SIDES,
) -> Attempt:
    change = Change(source=SHOTS, in_=in_, out=in_ + frames, at=at, tracks=tracks)
    return Attempt(master, change, mode, BENCH)


def states(tape: Tape, start: int, end: int) -> set[Condition]:
    """What playback shows between two frames."""
    return {s.state for s in play(tape, BENCH) if s.end > start and s.start < end}


# Each belief where it makes a difference: the attempt, and a stretch that a believer
# expects to play cleanly and that does not.
WHERE = {
    "sound-needs-no-pulses": (attempt(Mode.INSERT_SOUND, 4000), 4000, 4300),
    "insert-lays-pulses": (attempt(Mode.INSERT_BOTH, 1200), 1200, 1290),
    "assemble-ends-clean": (attempt(Mode.ASSEMBLE, 800), 1100, 1200),
    "gap-heals": (attempt(Mode.ASSEMBLE, 1220), 1000, 1520),
    "no-source-run-up": (attempt(Mode.INSERT_BOTH, 800, in_=20), 800, 1100),
    "no-master-run-up": (attempt(Mode.ASSEMBLE, 60), 60, 360),
    "plays-without-pulses": (attempt(Mode.INSERT_BOTH, 4000), 4000, 4300),
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
    tried = attempt(Mode.ASSEMBLE, 900, tracks=("picture",))
    at_900 = recorded(tried, ("assemble-picks-tracks",)).sound.at(900)

    assert recorded(tried).sound.at(900) != FILM.sound.at(900)
    assert at_900 is not None
    assert at_900.tail(900).value.frame == 600


def test_pushed_frames_come_later() -> None:
    tried = attempt(Mode.INSERT_BOTH, 900)
    pushed = recorded(tried, ("insert-pushes-along",))
    before, after = FILM.picture.at(1000), pushed.picture.at(1300)

    assert before is not None
    assert after is not None
    assert after.tail(1300).value == before.tail(1000).value


def test_ragged_end_spoils_what_follows() -> None:
    tried = attempt(Mode.INSERT_PICTURE, 800)

    assert states(recorded(tried), 1100, 1130) == {Condition.CLEAN}
    assert states(recorded(tried, ("insert-ends-ragged",)), 1100, 1130) == {Condition.UNSETTLED}


@pytest.mark.parametrize("mode", Mode)
def test_no_belief_is_the_true_model(mode: Mode) -> None:
    tried = attempt(mode, 800)

    assert recorded(tried) == record(FILM, tried.edit, BENCH)


@pytest.mark.parametrize("belief", BELIEFS)
def test_belief_is_a_known_misconception(belief: str) -> None:
    assert MISCONCEPTIONS[belief].id == belief


@pytest.mark.parametrize("belief", BELIEFS)
def test_belief_changes_nothing_in_modes_that_it_does_not_concern(belief: str) -> None:
    for mode in set(Mode) - set(BELIEFS[belief].modes):
        tried = attempt(mode, 1200)
        assert recorded(tried, (belief,)) == recorded(tried)
