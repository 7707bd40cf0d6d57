"""Noisy pauses, from the gain's own attack and release."""

from dataclasses import replace
from math import exp

import pytest

from exercises.tape import (
    AutomaticGain,
    Bench,
    Carried,
    FaultKind,
    Insert,
    Levels,
    Machines,
    Marks,
    SoundLevel,
    SoundMode,
    Span,
    Take,
)
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

WORDS = (Span(100, 125), Span(150, 175), Span(180, 200))


def automatic(source_marks: Marks, first: int, out: int, *, gain: int = 0) -> Insert:
    machines = Machines(sound=SoundLevel(SoundMode.AUTOMATIC, gain))
    return insert(carrying(marks=source_marks), first, out, 500, machines=machines)


SPEECH = Marks(words=WORDS)


def noise(seconds: float, *, room: float = -400, most: float = 200, release: float = 0.5) -> int:
    """Room tone with the gain that is recovered in so long a pause after speech at line-up."""
    return round(room + most * (1 - exp(-seconds / release)))


def test_long_pause_is_noisy_and_a_short_one_is_not() -> None:
    # 25 frames are 1 s, 5 frames 0.2 s.
    assert noise(0.2) == -334
    assert told(FaultKind.NOISY_PAUSES, automatic(SPEECH, 100, 200)) == [(525, 550, 0, noise(1))]


def test_pause_is_noisy_by_as_much_of_it_as_is_heard() -> None:
    assert told(FaultKind.NOISY_PAUSES, automatic(SPEECH, 100, 145)) == [(525, 545, 0, noise(0.8))]
    assert told(FaultKind.NOISY_PAUSES, automatic(SPEECH, 100, 130)) == []


def test_recording_that_starts_in_a_pause_has_recovered_during_the_pre_roll() -> None:
    bench = replace(BENCH, lock=10)  # 0.4 s of the pause before the edit in
    shot = automatic(SPEECH, 140, 170)

    assert told(FaultKind.NOISY_PAUSES, shot) == [(500, 510, 0, noise(0.4))]  # no pre-roll
    assert told(FaultKind.NOISY_PAUSES, shot, bench=bench) == [(500, 510, 0, noise(0.8))]


def test_gain_comes_down_again_in_the_word() -> None:
    again = Marks(words=(*WORDS[:2], Span(200, 220)))

    assert told(FaultKind.NOISY_PAUSES, automatic(again, 100, 220)) == [
        (525, 550, 0, noise(1)),
        (575, 600, 0, noise(1)),
    ]


def test_slow_attack_leaves_the_gain_up_after_a_short_word() -> None:
    clipped = Marks(words=(Span(100, 125), Span(150, 151), Span(156, 170)))
    slow = replace(BENCH, automatic_gain=AutomaticGain(attack=400))

    shot = automatic(clipped, 100, 170)

    values = [fault.measured.value for fault in found(FaultKind.NOISY_PAUSES, shot, bench=slow)]

    up = 200 * (1 - exp(-2))
    after_word = up * exp(-0.1)
    assert values == [round(-400 + up), round(-400 + 200 + (after_word - 200) * exp(-0.4))]


@pytest.mark.parametrize("mode", [SoundMode.BY_HAND, SoundMode.LIMITER])
def test_only_automatic_gain_lifts_a_pause(mode: SoundMode) -> None:
    shot = insert(carrying(marks=SPEECH), 100, 200, 500, machines=Machines(sound=SoundLevel(mode)))

    assert told(FaultKind.NOISY_PAUSES, shot) == []


def test_quiet_room_stays_quiet_and_the_limit_is_the_benchs() -> None:
    machines = Machines(sound=SoundLevel(SoundMode.AUTOMATIC))
    take = Take(0, 1000, carried=Carried(Levels(room=-600), marks=SPEECH))
    shot = insert(tape(take), 100, 200, 500, machines=machines)

    assert told(FaultKind.NOISY_PAUSES, shot) == []
    assert told(FaultKind.NOISY_PAUSES, shot, bench=limited(noise_floor=-430)) == [
        (525, 550, 0, noise(1, room=-600))
    ]


def test_noise_that_the_gain_did_not_raise_is_not_its_doing() -> None:
    machines = Machines(sound=SoundLevel(SoundMode.AUTOMATIC))
    shot = insert(carrying(room=-200, marks=SPEECH), 100, 200, 500, machines=machines)
    stiff = replace(BENCH, automatic_gain=AutomaticGain(most=9))

    assert told(FaultKind.NOISY_PAUSES, shot, bench=stiff) == []


def test_pre_roll_that_starts_in_a_word_starts_at_rest() -> None:
    bench = replace(BENCH, lock=10)

    assert told(FaultKind.NOISY_PAUSES, automatic(SPEECH, 120, 150), bench=bench) == [
        (505, 530, 0, noise(1))
    ]


def test_sound_without_words_has_no_pauses() -> None:
    assert told(FaultKind.NOISY_PAUSES, automatic(Marks(), 100, 200)) == []
    noise_only = Marks(noises=(Span(150, 160),))
    assert told(FaultKind.NOISY_PAUSES, automatic(noise_only, 100, 200)) == []


def test_noise_breaks_a_pause() -> None:
    bump = replace(SPEECH, noises=(Span(135, 140),))

    # A bang at the level of the speech brings the gain down; what is left is 0.4 s each.
    assert noise(0.4) < -289
    assert (
        told(FaultKind.NOISY_PAUSES, automatic(bump, 100, 175), bench=limited(noise_floor=-280))
        == []
    )
    assert told(
        FaultKind.NOISY_PAUSES, automatic(bump, 100, 175), bench=limited(noise_floor=-300)
    ) == [
        (525, 535, 0, noise(0.4)),
        (540, 550, 0, noise(0.4)),
    ]


def test_what_is_left_of_a_recording_keeps_its_gain() -> None:
    tail = insert(tape(name="B"), 0, 30, 500)

    left = recorded(automatic(SPEECH, 100, 200), tail)

    assert told(FaultKind.NOISY_PAUSES, on=left) == [(530, 550, 0, noise(1))]


def test_louder_input_needs_less_gain_and_leaves_more_to_recover() -> None:
    bench: Bench = limited(noise_floor=-400)

    def lifted(sound: int) -> int:
        machines = Machines(sound=SoundLevel(SoundMode.AUTOMATIC))
        shot = insert(carrying(sound=sound, marks=SPEECH), 100, 150, 500, machines=machines)
        return found(FaultKind.NOISY_PAUSES, shot, bench=bench)[0].measured.value

    rest = -100.0  # speech 10 dB over line-up has 10 dB taken off
    assert lifted(100) == round(-400 + 200 + (rest - 200) * exp(-2))
    assert lifted(0) == noise(1)
