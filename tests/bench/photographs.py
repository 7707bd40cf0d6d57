"""What the worst pictures cost that are taken: ``python -m tests.bench.photographs``.

Each is of as many pixels as allowed, in the way of its format that takes most. The limits in
`exercises/signal/photographs/limits.py` leave room over the figures here. The last is refused.
"""

import json
import resource
import subprocess
import sys
import time
from collections.abc import Iterator

import numpy as np
from PIL import Image

from exercises.signal.photographs.limits import MEMORY, MOST_SCANS, SECONDS
from exercises.signal.photographs.parts import looked_through
from exercises.signal.photographs.trouble import PhotographRefused
from tests.photographs import file_of, layered

SIDE = 5000
# Runs the decoder without limits, then tells of its time and of its largest address space.
MEASURED = """
import resource, sys
from exercises.signal.photographs.drawing import drawn_anew
drawn_anew(sys.stdin.buffer.read())
used = resource.getrusage(resource.RUSAGE_SELF)
peak = next(line for line in open("/proc/self/status") if line.startswith("VmPeak"))
print(used.ru_utime + used.ru_stime, int(peak.split()[1]) * 1024)
"""


def worst() -> Iterator[tuple[str, bytes]]:
    """A slope in each colour, turned by its notes."""
    across, down = np.meshgrid(np.arange(SIDE) // 20, np.arange(SIDE) // 20)
    slopes = [across % 256, down % 256, (across + down) % 256, (across - down) % 256]
    clear = Image.fromarray(np.stack(slopes, axis=-1).astype(np.uint8), "RGBA")
    solid = clear.convert("RGB")
    notes = Image.Exif()
    notes[0x0112] = 6
    yield "JPEG", file_of(solid, exif=notes)
    inks = solid.convert("CMYK")
    yield (
        "JPEG, progressive, four inks",
        file_of(inks, exif=notes, progressive=True, subsampling=0),
    )
    yield f"JPEG, {MOST_SCANS} scans", layered(MOST_SCANS, (SIDE, SIDE))
    yield "PNG, see-through", file_of(clear, "PNG", exif=notes)
    yield "PNG, palette", file_of(solid.quantize(200), "PNG", transparency=3, exif=notes)
    yield "WebP", file_of(solid, "WEBP", exif=notes)
    yield "WebP, lossless, see-through", file_of(clear, "WEBP", lossless=True, exif=notes)


def measured(content: bytes) -> tuple[float, float]:
    """Seconds of a processor, and MB of address space."""
    command = [sys.executable, "-W", "ignore", "-c", MEASURED]
    done = subprocess.run(command, input=content, capture_output=True, check=True)
    seconds, size = done.stdout.split()
    return float(seconds), int(size) / 1e6


def refused_in(content: bytes) -> float:
    """Milliseconds until a picture made to harm is refused."""
    begun = time.perf_counter()
    try:
        looked_through(content)
    except PhotographRefused:
        return 1000 * (time.perf_counter() - begun)
    raise SystemExit("it was not refused")


def main() -> None:
    figures: dict[str, float] = {}
    print(f"Limits: {SECONDS} s, {MEMORY / 1e6:.0f} MB\n")
    print(f"{'':32}{'kB':>8}{'CPU s':>8}{'MB':>8}")
    for name, content in worst():
        seconds, size = measured(content)
        print(f"{name:32}{len(content) / 1000:8.0f}{seconds:8.2f}{size:8.0f}")
        figures |= {f"{name}, s": round(seconds, 2), f"{name}, MB": round(size)}
    bomb = layered(2000, (SIDE, SIDE))
    took = refused_in(bomb)
    print(f"\nJPEG of 2,000 scans, {len(bomb) / 1000:.0f} kB: refused in {took:.1f} ms")
    figures["refused, ms"] = round(took, 1)
    figures["this process, MB"] = round(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000)
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
