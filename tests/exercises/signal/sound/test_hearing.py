import tracemalloc

import numpy as np
import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.hearing import AROUND, Hearing
from exercises.signal.sound.hiss import SNR
from exercises.signal.sound.noise import room_tone
from exercises.signal.sound.samples import RATE, Samples, average_level, sample_at
from exercises.signal.sound.soundtrack import Soundtrack
from exercises.signal.sound.tones import line_up_tone
from exercises.signal.speech.reel import reel
from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Insert
from exercises.tape.history import Carried
from exercises.tape.levels import Levels
from exercises.tape.machines import Machines, SoundLevel, SoundMode
from exercises.tape.rate import Rate
from exercises.tape.recording import record
from exercises.tape.source import Source, Take
from exercises.tape.tape import Tape
from tests.waves import rms_level, strength

BENCH = Bench.default(Rate.R25)
TALK = reel("keeper-1", "keeper-2", "keeper-4", "keeper-6", begin=6000, pause=1000)
SOUNDTRACKS = {
    "talk": Soundtrack(TALK, room_tone()),
    "tone": Soundtrack(line_up_tone(), room_tone()),
}
FRAME = 640  # samples


def source(name: str, carried: Levels | None = None) -> Source:
    marks = TALK.marks(Rate.R25)
    return Source(name, (Take(0, 1500, carried=Carried(carried or Levels(), marks=marks)),))


def edited(machines: Machines | None = None, *, name: str = "talk", in_: int = 150) -> Tape:
    """Black to frame 400, then the source from ``in_`` on, up to frame 650."""
    master = Tape.blank(1000).with_pass(0, 400, "black")
    edit = Assemble(source(name), in_=in_, out=in_ + 250, at=400, machines=machines or Machines())
    return record(master, edit, BENCH, 0)


def heard(tape: Tape, start: int, end: int) -> Samples:
    return Hearing(tape, BENCH, SOUNDTRACKS, start, end).samples()


def test_well_made_edit_is_heard_as_its_source() -> None:
    got = heard(edited(), 400, 650)

    said = TALK.read(150 * FRAME, 250 * FRAME)
    assert np.corrcoef(got, said)[0, 1] > 0.99
    assert vu.peak(got) == pytest.approx(vu.peak(said), abs=7)


@pytest.mark.parametrize("rate", list(Rate))
def test_as_many_samples_are_heard_as_the_frames_last(rate: Rate) -> None:
    hearing = Hearing(Tape.blank(100), Bench.default(rate), {}, 3, 99)

    assert len(hearing.samples()) == hearing.length == sample_at(99, rate) - sample_at(3, rate)


def test_sound_without_pulses_is_heard_and_never_steady() -> None:
    """The capstan has nothing to lock to, and runs at about its speed (common practice)."""
    master = Tape.blank(1000).with_pass(0, 400, "black")
    edit = Insert(source("tone"), 150, 450, 300, picture=False, sound=True)
    tape = record(master, edit, BENCH, 0)

    steady, adrift = (heard(tape, at, at + 100) for at in (300, 450))
    assert rms_level(adrift) == pytest.approx(rms_level(steady), abs=5)
    assert strength(adrift, 1000) < 0.7 * strength(steady, 1000)
    assert not heard(tape, 620, 700).any()


def test_blank_tape_is_muted() -> None:
    got = heard(edited(), 600, 800)

    assert got[: 50 * FRAME].any()
    assert not got[50 * FRAME :].any()


def test_black_holds_hiss_only() -> None:
    assert rms_level(heard(edited(), 100, 300)) == pytest.approx(-10 * SNR, abs=2)


@pytest.mark.parametrize("mode", list(SoundMode))
def test_place_sounds_the_same_wherever_one_begins_to_listen(mode: SoundMode) -> None:
    tape = edited(Machines(sound=SoundLevel(mode, gain=90)))

    whole, part = heard(tape, 380, 640), heard(tape, 543, 600)

    np.testing.assert_allclose(part, whole[163 * FRAME : 220 * FRAME], rtol=1e-3, atol=1e-4)


def test_gain_of_the_recorder_is_heard() -> None:
    quiet = heard(edited(Machines(sound=SoundLevel(gain=-100)), name="tone"), 450, 600)

    assert rms_level(quiet) == pytest.approx(-100, abs=1.5)


def test_level_of_the_source_is_heard() -> None:
    tape = Tape.blank(1000).with_pass(0, 400, "black")
    carried = Levels(sound=-60)
    tape = record(tape, Assemble(source("tone", carried), in_=150, out=400, at=400), BENCH, 0)

    assert rms_level(heard(tape, 450, 600)) == pytest.approx(-60, abs=2)


def test_no_gain_brings_back_what_was_distorted_on_the_source() -> None:
    loud = source("tone", Levels(sound=200))
    tape = Tape.blank(1000).with_pass(0, 400, "black")
    turned_down = Machines(sound=SoundLevel(gain=-200))
    edit = Assemble(loud, in_=150, out=400, at=400, machines=turned_down)

    got = heard(record(tape, edit, BENCH, 0), 450, 475)

    assert strength(got, 3000) / strength(got, 1000) > 0.1


def test_automatic_gain_lifts_the_pause_as_the_tape_model_says() -> None:
    gap = TALK.placed[1].at  # the line after it begins with a word
    before, pause = TALK.placed[0].end, slice(gap - 60, gap - 10)
    automatic = Machines(sound=SoundLevel(SoundMode.AUTOMATIC))

    levels = [
        average_level(heard(edited(machines), 400, 650)[_milliseconds(pause)])
        for machines in (Machines(), automatic)
    ]

    expected = BENCH.automatic_gain.after(gap - 35 - before, gain=0, level=-400)
    assert levels[1] - levels[0] == pytest.approx(expected, abs=10)


def _milliseconds(source: slice) -> slice:
    """Of what is heard from frame 400 on, which is frame 150 of the source."""
    return slice(*((each - 6000) * RATE // 1000 for each in (source.start, source.stop)))


def test_cut_inside_a_word_leaves_out_what_is_before_it() -> None:
    word = next(each for each in TALK.words if each.text == "forty")
    middle = sum(word.heard) // 2 // 40

    got = heard(edited(in_=middle), 400, 420)

    source = TALK.read(middle * FRAME, 20 * FRAME)
    assert np.corrcoef(got[100:4000], source[100:4000])[0, 1] > 0.99


def test_copies_hiss_louder_with_each_generation() -> None:
    levels = []
    for generation in (1, 3, 7):
        quiet = Carried(Levels(room=-2000))
        copied = Source("talk", (Take(0, 1500, generation, quiet),))
        tape = Tape.blank(1000).with_pass(0, 400, "black")
        tape = record(tape, Assemble(copied, in_=0, out=130, at=400), BENCH, 0)
        levels.append(rms_level(heard(tape, 400, 530)))

    assert [each - levels[0] for each in levels[1:]] == pytest.approx([30.1, 60.2], abs=3)


def test_sound_recorded_before_the_machines_were_locked_is_unsteady() -> None:
    settled, unsettled = edited(name="tone"), edited(name="tone", in_=25)

    rough = [_unsteadiness(heard(tape, 410, 480)) for tape in (settled, unsettled)]

    assert rough[0] < 0.02 < 0.3 < rough[1]


def test_sound_is_unsteady_while_the_player_finds_new_pulses() -> None:
    tape = Tape.blank(1000).with_pass(0, 200, "tone").with_pass(200, 900, "tone")

    rough = [_unsteadiness(heard(tape, start, start + 15)) for start in (150, 201, 230)]

    assert rough[0] < 0.02 < 0.3 < rough[1]
    assert rough[2] < 0.02


def _unsteadiness(samples: Samples) -> float:
    """How much of a 1 kHz tone's energy is not at 1 kHz."""
    spectrum = np.abs(np.fft.rfft(samples * np.hanning(len(samples)))) ** 2
    at = round(1000 * len(samples) / RATE)
    return float(1 - spectrum[at - 4 : at + 5].sum() / spectrum.sum())


def test_insert_of_sound_changes_what_is_heard_there_only() -> None:
    before = edited()
    insert = Insert(source("tone"), in_=200, out=250, at=500, picture=False, sound=True)
    after = record(before, insert, BENCH, 1)

    was, now = heard(before, 400, 650), heard(after, 400, 650)

    ramp = 32
    np.testing.assert_array_equal(now[: 100 * FRAME], was[: 100 * FRAME])
    np.testing.assert_array_equal(now[150 * FRAME + ramp :], was[150 * FRAME + ramp :])
    assert rms_level(now[101 * FRAME : 149 * FRAME]) == pytest.approx(0, abs=1)


def test_hearing_around_an_edit_point_stays_on_the_tape() -> None:
    tape = edited()

    spans = [
        (each.start, each.end)
        for each in (Hearing.around(tape, BENCH, SOUNDTRACKS, frame) for frame in (10, 400, 990))
    ]

    reach = AROUND * 25
    assert spans == [(0, 10 + reach), (400 - reach, 400 + reach), (990 - reach, 1000)]


def test_source_without_a_soundtrack_is_refused() -> None:
    with pytest.raises(KeyError, match="talk"):
        Hearing(edited(), BENCH, {}, 390, 410).samples()


@pytest.mark.parametrize(("start", "end"), [(-1, 5), (5, 5), (7, 5), (0, 1001)])
def test_frames_off_the_tape_are_refused(start: int, end: int) -> None:
    with pytest.raises(ValueError, match="not on the tape"):
        Hearing(Tape.blank(1000), BENCH, {}, start, end)


def test_memory_does_not_grow_with_the_length() -> None:
    tape = Tape.blank(5000).with_pass(0, 5000, "tone")
    heard(tape, 0, 10)

    held = [_most_memory(Hearing(tape, BENCH, SOUNDTRACKS, 0, end)) for end in (250, 5000)]

    assert held[1] < 1.1 * held[0]


def _most_memory(hearing: Hearing) -> int:
    tracemalloc.start()
    for _ in hearing.stream():
        pass
    held = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    return held
