from math import log10

import pytest

from exercises.tape import (
    Drift,
    FaultKind,
    Insert,
    Machines,
    Player,
    Recorder,
    Severity,
    SoundLevel,
    SoundMode,
)
from exercises.tape.drift import adjustments
from tests.exercises.tape.faults.benchwork import (
    BENCH,
    carrying,
    found,
    insert,
    limited,
    recorded,
    tape,
    told,
)


def copied(player: Player, frames: int = 100) -> Insert:
    return insert(carrying(), 200, 200 + frames, 500, machines=Machines(player=player))


@pytest.mark.parametrize(
    ("tracking", "losses"),
    # Half a track loses half of the signal: 6.02 dB, just over the limit of 6 dB.
    [(0, []), (49, []), (50, []), (51, [62]), (-60, [80]), (90, [200]), (100, [400])],
)
def test_noise_band_where_more_than_half_the_signal_is_lost(
    tracking: int, losses: list[int]
) -> None:
    assert told(FaultKind.NOISE_BAND, copied(Player(tracking=tracking))) == [
        (500, 600, 0, loss) for loss in losses
    ]


@pytest.mark.parametrize(("skew", "steps"), [(10, []), (-10, []), (11, [11]), (-40, [40])])
def test_verticals_bend_by_the_skew(skew: int, steps: list[int]) -> None:
    assert told(FaultKind.BENT_VERTICALS, copied(Player(skew=skew))) == [
        (500, 600, 0, step) for step in steps
    ]


def test_tracking_bends_nothing_and_skew_makes_no_noise() -> None:
    assert told(FaultKind.BENT_VERTICALS, copied(Player(tracking=90))) == []
    assert told(FaultKind.NOISE_BAND, copied(Player(skew=90))) == []


def test_drift_is_recorded_second_by_second() -> None:
    player = Player(tracking=30, drift=Drift(5, tracking=15))
    held = [each.tracking for each in adjustments(player, 250, BENCH.rate)]
    assert held == [30, 34, 43, 50, 36, 49, 61, 60, 61, 47]

    worst = round(-200 * log10(1 - 0.61))

    assert told(FaultKind.NOISE_BAND, copied(player, 250)) == [(650, 725, 0, worst)]


def test_what_is_left_of_a_recording_keeps_its_drift() -> None:
    player = Player(tracking=30, drift=Drift(5, tracking=15))
    left = recorded(copied(player, 250), insert(tape(name="B"), 0, 165, 500))

    assert [fault[:2] for fault in told(FaultKind.NOISE_BAND, on=left)] == [(665, 725)]


def test_what_is_left_of_a_recording_under_automatic_gain_keeps_its_adjustment() -> None:
    machines = Machines(Player(tracking=60), sound=SoundLevel(SoundMode.AUTOMATIC))
    shot = insert(carrying(), 200, 300, 500, machines=machines)
    left = recorded(shot, insert(tape(name="B"), 0, 60, 500))

    assert told(FaultKind.NOISE_BAND, on=left) == [(560, 600, 0, 80)]


def test_what_is_left_is_measured_by_what_is_left() -> None:
    player = Player(tracking=80, drift=Drift(7, tracking=60))
    assert [each.tracking for each in adjustments(player, 75, BENCH.rate)] == [80, 59, 77]

    left = recorded(copied(player, 75), insert(tape(name="B"), 0, 60, 500))

    assert told(FaultKind.NOISE_BAND, on=left) == [(560, 575, 0, round(-200 * log10(1 - 0.77)))]


def test_unsettled_start_is_part_of_the_same_fault() -> None:
    bench = type(BENCH)(BENCH.rate, lock=230, relock=0, erase_gap=0)

    shot = insert(carrying(), 200, 300, 500, machines=Machines(player=Player(skew=20)))

    assert told(FaultKind.BENT_VERTICALS, shot, bench=bench) == [(500, 600, 0, 20)]


def test_sound_alone_has_no_noise_band() -> None:
    machines = Machines(player=Player(tracking=90), recorder=Recorder(tracking=9))
    shot = insert(carrying(), 200, 300, 500, machines=machines, tracks="sound")

    assert told(FaultKind.NOISE_BAND, shot) == []
    assert told(FaultKind.RECORDER_OFF_POSITION, shot) == []


@pytest.mark.parametrize(("tracking", "off"), [(0, []), (1, [1]), (-25, [25])])
def test_recorder_has_one_position(tracking: int, off: list[int]) -> None:
    machines = Machines(recorder=Recorder(tracking=tracking))

    assert told(
        FaultKind.RECORDER_OFF_POSITION, insert(carrying(), 0, 100, 500, machines=machines)
    ) == [(500, 600, 0, value) for value in off]


def test_bench_sets_its_own_limits() -> None:
    lax = limited(envelope_loss=200, skew=50, recorder_tracking=30)
    machines = Machines(Player(tracking=90, skew=50), Recorder(tracking=30))
    shot = insert(carrying(), 0, 100, 500, machines=machines)

    for kind in (FaultKind.NOISE_BAND, FaultKind.BENT_VERTICALS, FaultKind.RECORDER_OFF_POSITION):
        assert len(told(kind, shot)) == 1
        assert told(kind, shot, bench=lax) == []


def test_worse_adjustment_annoys_more() -> None:
    def severity(skew: int) -> Severity:
        return found(FaultKind.BENT_VERTICALS, copied(Player(skew=skew)))[0].severity

    assert [severity(skew) for skew in (11, 20, 21, 31, 41, 200)] == [
        Severity.PERCEPTIBLE,
        Severity.PERCEPTIBLE,
        Severity.SLIGHTLY_ANNOYING,
        Severity.ANNOYING,
        Severity.VERY_ANNOYING,
        Severity.VERY_ANNOYING,
    ]
