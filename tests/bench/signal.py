"""How long pictures take: ``python -m tests.bench.signal``.

Rendering is measured by JPEG encoding of the same frame, in turns; the best turn of each
counts. Memory is what numpy and Python hold at most while a clip is made, by tracemalloc.
"""

import gc
import json
import tracemalloc
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import partial
from itertools import chain
from tempfile import TemporaryFile

from exercises.signal.arrays import Picture, Size
from exercises.signal.footage import frame
from exercises.signal.motion import jpeg, strip, write_clip
from exercises.signal.picture import Look, rendered
from exercises.tape import Rate
from tests.bench.stopwatch import milliseconds

TURNS = 40
EVERY_FAULT = Look(
    source=104, gain=2, pedestal=3, snr=38.2, copies=6, tracking=60, skew=4, dropouts=6
)
LOOKS = {
    "every fault, locked": EVERY_FAULT,
    "every fault, locking": replace(EVERY_FAULT, settling=0.4),
}
SIZES: dict[str, Size] = {
    "320×240": (320, 240),
    "640×480": (640, 480),
    "1280×960": (1280, 960),
}
SMALL: Size = (320, 240)
KNOB = [Look(tracking=5.0 * step - 100, snr=46, copies=1) for step in range(41)]


def best(*works: Callable[[], object], turns: int = TURNS) -> list[float]:
    """The best of several turns of each, taken in turns."""
    rounds = [[milliseconds(work) for work in works] for _ in range(turns)]
    return [min(times) for times in zip(*rounds, strict=True)]


def by_jpeg(look: Look) -> tuple[float, float]:
    """Milliseconds to render a frame, and to encode what came of it."""
    clean = frame("turning", 50)
    spoiled = rendered(clean, look, 1)
    render, encode = best(lambda: rendered(clean, look, 1), lambda: jpeg(spoiled))
    return render, encode


def by_size() -> dict[str, float]:
    """Nanoseconds a pixel, with every fault."""
    pixels = {}
    for name, size in SIZES.items():
        clean = frame("turning", 50, size)
        (took,) = best(partial(rendered, clean, EVERY_FAULT, 1))
        pixels[name] = 1e6 * took / (size[0] * size[1])
    return pixels


def knob_strip() -> tuple[float, float]:
    """Milliseconds for a strip of 41 positions of the tracking, and for 41 frames alone.

    The strip's encoding counts for it, that of each frame for the frames.
    """
    clean = frame("turning", 50, SMALL)
    spoiled = [rendered(clean, look, 1) for look in KNOB]

    def frames() -> Iterator[Picture]:
        return (rendered(clean, look, 1) for look in KNOB)

    def alone() -> None:
        for look, _ in zip(KNOB, spoiled, strict=True):
            jpeg(rendered(clean, look, 1))

    whole, each = best(lambda: strip(frames(), len(KNOB)), alone, turns=12)
    return whole, each


def clip_memory(seconds: int) -> float:
    """MB held at most while a clip of so many seconds is written."""
    frames = (rendered(frame("turning", n, SMALL), EVERY_FAULT, n) for n in range(30 * seconds))
    first = next(frames)
    gc.collect()
    tracemalloc.start()
    with TemporaryFile() as file:
        write_clip(chain([first], frames), file, Rate.R29_97)
    most = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    return most / 1e6


def main() -> None:
    figures: dict[str, float] = {}
    print("One 640×480 frame, by JPEG encoding (quality 85) of the same frame.\n")
    print(f"{'':26}{'render':>10}{'JPEG':>10}{'ratio':>8}   (goal: at most 3)")
    for name, look in LOOKS.items():
        render, encode = by_jpeg(look)
        print(f"{name:26}{render:7.2f} ms{encode:7.2f} ms{render / encode:8.2f}")
        figures[f"{name} by JPEG"] = render / encode
    print("\nEvery fault, by size, in ns a pixel (goal: linear, so about the same):\n")
    for name, took in by_size().items():
        print(f"{name:26}{took:7.2f}")
        figures[f"ns a pixel at {name}"] = took
    whole, each = knob_strip()
    print("\n41 knob positions at 320×240 (goal: the strip at most 1.1 of the frames):\n")
    print(f"{'strip':26}{whole:7.2f} ms\n{'41 frames':26}{each:7.2f} ms{whole / each:8.2f}")
    figures["strip by 41 frames"] = whole / each
    print("\nMemory held at most while a clip at 320×240 is written (goal: no growth):\n")
    for seconds in (1, 10):
        held = clip_memory(seconds)
        print(f"{seconds:3} s {held:20.2f} MB")
        figures[f"clip of {seconds} s, MB"] = held
    print()
    print(
        json.dumps({name: round(figure, 3) for name, figure in figures.items()}, ensure_ascii=False)
    )


if __name__ == "__main__":
    main()
