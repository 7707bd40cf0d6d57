"""Nothing that we can make move flashes three times a second (WCAG 2.2, 2.3.1)."""

from collections.abc import Callable, Iterator
from itertools import chain
from math import sin

import numpy as np
import pytest

from exercises.signal.arrays import STANDARD, Picture, Size
from exercises.signal.footage import FOOTAGE, frame
from exercises.signal.lines import Lines
from exercises.signal.picture import Look, rendered
from exercises.tape import (
    Bench,
    Drift,
    Machines,
    Player,
    Rate,
    Recorder,
    Source,
    Take,
    Tape,
    record,
)
from exercises.tape.edit import Assemble, Edit, Insert
from tests.outside.flashes import flashes
from tests.outside.viewed import Filmed, Viewing

RATE = 30
SMALL, ZOOM = (320, 240), 2  # drawn at half its size, a picture flashes as the whole does
BENCH = Bench.default(Rate.R25)


def blinking(colour: tuple[int, int, int], frames: int, zoom: int = ZOOM) -> Iterator[Picture]:
    """A whole screen that changes between a colour and black every so many frames."""
    lit = np.full((480 // zoom, 640 // zoom, 3), colour, np.uint8)
    return (lit * np.uint8(n // frames % 2) for n in range(60))


@pytest.mark.parametrize(("frames", "count"), [(3, 5.0), (5, 3.0), (10, 1.5), (15, 1.0)])
def test_general_flashes_of_a_blinking_screen_are_counted(frames: int, count: float) -> None:
    """WCAG 2.2, “general flash”: half a flash is one change; 30 frames a second."""
    assert flashes(blinking((255, 255, 255), frames), RATE, ZOOM)[0] == count


def test_small_picture_that_is_shown_large_flashes_as_a_large_one() -> None:
    """WCAG 2.2: fields of 10° of what is looked at."""
    large, small = (flashes(blinking((255, 90, 40), 4, zoom), RATE, zoom) for zoom in (1, ZOOM))

    assert large == small


def test_red_flashes_of_a_blinking_red_screen_are_counted() -> None:
    """WCAG 2.2, “red flash”: opposing changes to or from a saturated red."""
    assert flashes(blinking((255, 0, 0), 5), RATE, ZOOM) == (3.0, 3.0)


def test_small_steps_and_small_areas_do_not_count() -> None:
    """WCAG 2.2: changes under a tenth of the luminance, and areas under a quarter of 10°."""
    dim = (np.full((480, 640, 3), 120 + 10 * (n % 2), np.uint8) for n in range(60))
    spot = np.zeros((480, 640, 3), np.uint8)
    spot[96:208, 208:336] = 255

    assert flashes(dim, RATE) == (0.0, 0.0)
    assert flashes((spot * np.uint8(n % 2) for n in range(60)), RATE) == (0.0, 0.0)


@pytest.mark.parametrize("name", FOOTAGE)
def test_footage_does_not_flash(name: str) -> None:
    """WCAG 2.2, 2.3.1: every fourth frame of eight seconds."""
    assert max(flashes((frame(name, n, SMALL) for n in range(0, 240, 4)), RATE // 4, ZOOM)) < 3


@pytest.mark.parametrize("name", FOOTAGE)
def test_locking_does_not_flash(name: str) -> None:
    """WCAG 2.2, 2.3.1: the quickest locking there is, between a shot before it and what it comes
    to.
    """
    locked = Look(lines=Lines.L625, snr=46, copies=1)
    before = (frame("keeper", n, SMALL) for n in range(4))
    locking = (
        rendered(
            frame(name, n, SMALL), Look(lines=Lines.L625, snr=46, copies=1, settling=n / 25), n
        )
        for n in range(25)
    )
    after = (rendered(frame(name, n, SMALL), locked, n) for n in range(25, 36))

    assert max(flashes(chain(before, locking, after), 25, ZOOM)) < 3


SNOW = Look(blank=True)
# Snow is as fine as a picture has pixels: drawn at half its size, it would be twice as coarse.
SNOWY = {"snow", "tracking hunts", "past its end"}
WANDERING: dict[str, Callable[[int], Look]] = {
    "snow": lambda n: SNOW,
    "adrift": lambda n: Look(adrift=n / 150, snr=43, copies=2),
    "tracking hunts": lambda n: Look(tracking=55 + 40 * sin(n / 9), snr=43, copies=2),
    "skew swings": lambda n: Look(skew=8 * sin(n / 7), snr=43, copies=2),
    "many dropouts": lambda n: Look(dropouts=40, snr=40, copies=4),
    "level drifts": lambda n: Look(gain=4 * sin(n / 12), snr=43, copies=2),
}


@pytest.mark.parametrize("fault", WANDERING)
@pytest.mark.parametrize("name", ["turning", "bars"])
def test_faults_in_motion_do_not_flash(name: str, fault: str) -> None:
    """WCAG 2.2, 2.3.1: faults at their strongest, wandering."""
    size, zoom = drawn(fault)
    clean = (frame(name, n, size) for n in range(60))
    spoiled = (rendered(each, WANDERING[fault](n), n) for n, each in enumerate(clean))

    assert max(flashes(spoiled, RATE, zoom)) < 3


def drawn(story: str) -> tuple[Size, int]:
    """How large, and how many times as large it is shown."""
    return (STANDARD, 1) if story in SNOWY else (SMALL, ZOOM)


def spoiled_tape(*edits: Edit) -> Tape:
    tape = Tape.blank(800).with_pass(0, 300, "black")
    for index, edit in enumerate(edits):
        tape = record(tape, edit, BENCH, index)
    return tape


REEL = Source("A", (Take(0, 400), Take(400, 900), Take(900, 1400)))
FILMED = (Filmed(0, "turning"), Filmed(400, "winch"), Filmed(900, "photograph"))
BADLY = Machines(Player(60, -30, Drift(7, 20, 20)), Recorder("another", 10), picture_gain=30)
TAPES = {
    "assembled without run-up": (
        spoiled_tape(Assemble(REEL, 10, 90, 300), Assemble(REEL, 905, 985, 380)),
        290,
    ),
    "over the joint of two takes": (spoiled_tape(Assemble(REEL, 360, 470, 300)), 290),
    "flash frames between shots": (
        spoiled_tape(
            Insert(REEL, 200, 260, 100, picture=True, sound=True),
            Insert(REEL, 1100, 1103, 160, picture=True, sound=True),
            Insert(REEL, 600, 660, 163, picture=True, sound=True),
            Insert(REEL, 1200, 1202, 180, picture=True, sound=True),
        ),
        90,
    ),
    "badly made": (
        spoiled_tape(Insert(REEL, 1050, 1130, 130, picture=True, sound=True, machines=BADLY)),
        120,
    ),
    "past its end": (spoiled_tape(Assemble(REEL, 130, 200, 300)), 340),
}


@pytest.mark.parametrize("story", TAPES)
def test_edits_in_motion_do_not_flash(story: str) -> None:
    """WCAG 2.2, 2.3.1: edits as a monitor shows them."""
    assert viewed(story, "monitor") < 3


@pytest.mark.parametrize("display", ["underscan", "cross-pulse", "waveform"])
@pytest.mark.parametrize("story", ["assembled without run-up", "past its end"])
def test_other_displays_do_not_flash(story: str, display: str) -> None:
    """WCAG 2.2, 2.3.1: the same on the other displays."""
    assert viewed(story, display) < 3


def viewed(story: str, display: str) -> float:
    """Flashes in the worst second of a tape on a display."""
    tape, start = TAPES[story]
    size, zoom = (SMALL, ZOOM) if display == "waveform" else drawn(story)
    viewing = Viewing(tape, BENCH, {"A": FILMED})
    return max(flashes(viewing.pictures(start, start + 60, size=size, display=display), 25, zoom))
