from itertools import islice

import numpy as np
import pytest

from exercises.signal.displays import monitor
from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.picture import Look
from exercises.signal.viewing import Filmed, Viewing
from exercises.tape import Bench, Insert, Rate, Source, Take, Tape, record
from exercises.tape.noise import equal_copies_snr

BENCH = Bench.default(Rate.R25)
SIZE = (320, 240)
SHOTS = Source("A", (Take(0, 400), Take(400, 900)))
TAPE = record(
    Tape.blank(5000).with_pass(0, 4000, "black"),
    Insert(SHOTS, 200, 260, 1000, picture=True, sound=True),
    BENCH,
    0,
)
REELS = {"A": (Filmed(0, "turning", 50), Filmed(400, "keeper"))}


def test_pictures_are_the_sources_frames_as_the_tape_has_them() -> None:
    (shown,) = Viewing(TAPE, BENCH, REELS).pictures(1010, 1011, size=SIZE)
    look = Look(lines=Lines.L625, snr=equal_copies_snr(46, 2), copies=2)

    assert np.array_equal(shown, monitor(frame("turning", 260, SIZE), look, 1010))


def test_source_that_nobody_filmed_is_black() -> None:
    (shown,) = Viewing(TAPE, BENCH, REELS).pictures(500, 501, size=SIZE)

    assert shown.mean() < 3


def test_loudness_moves_the_lips() -> None:
    loud = Filmed(400, "keeper", loudness=[1.0] * 20)
    quiet = Filmed(400, "keeper", loudness=[0.0] * 20)

    assert np.array_equal(loud.picture(405, SIZE), frame("keeper", 5, SIZE, mouth=1.0))
    assert np.array_equal(quiet.picture(405, SIZE), frame("keeper", 5, SIZE, mouth=0.0))


def test_pictures_come_one_at_a_time() -> None:
    long = Viewing(TAPE, BENCH, REELS).pictures(100, 4900, size=SIZE)

    assert len(list(islice(long, 3))) == 3


@pytest.mark.parametrize(("start", "end"), [(-1, 5), (5, 5), (4999, 5001)])
def test_frames_that_are_not_on_the_tape_are_refused(start: int, end: int) -> None:
    with pytest.raises(ValueError, match=f"Frames {start} to {end} are not on the tape"):
        list(Viewing(TAPE, BENCH, REELS).pictures(start, end))
