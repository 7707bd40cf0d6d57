"""Contact sheets of footage and faults: ``python -m exercises.signal.sheet`` writes them anew."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Size
from exercises.signal.displays import cross_pulse, monitor, underscan, waveform
from exercises.signal.footage import FOOTAGE, frame
from exercises.signal.lines import Lines
from exercises.signal.motion import jpeg
from exercises.signal.picture import Look, rendered
from exercises.signal.scenes.lettering import lettered
from exercises.tape.noise import equal_copies_snr

FOLDER = Path(__file__).parent / "sheets"
QUALITY = 74
TILE: Size = (272, 204)
HEAD, GAP = 22, 6
PAPER, INK = 246, 40

Display = Callable[[Picture, Look, int], Picture]


def close(picture: Picture, look: Look, n: int) -> Picture:
    """The middle of the picture, pixel by pixel."""
    shown = rendered(picture, look, n)
    top, left = (shown.shape[0] - TILE[1]) // 2, (shown.shape[1] - TILE[0]) // 2
    return shown[top - 40 : top - 40 + TILE[1], left : left + TILE[0]]


@dataclass(frozen=True, slots=True)
class Row:
    """A fault at three strengths, each with its label, on one frame of footage."""

    name: str
    footage: str
    n: int
    looks: tuple[tuple[str, Look], ...]
    display: Display = monitor


def copied(**changes: object) -> Look:
    """A picture of the second generation, well made but for what is changed."""
    return replace(Look(snr=43, copies=2), **changes)  # type: ignore[arg-type]


def generation(n: int) -> Look:
    return Look(snr=equal_copies_snr(46, n), copies=n)


ROWS = (
    Row(
        "noise band: tracking off",
        "turning",
        70,
        tuple((f"{off} % of a track", copied(tracking=off)) for off in (55, 68, 85)),
    ),
    Row(
        "bent verticals: skew, underscan",
        "tools",
        60,
        tuple((f"{late} microseconds", copied(skew=late)) for late in (1.5, 4, -8)),
        underscan,
    ),
    Row(
        "skew, cross-pulse",
        "grid",
        0,
        tuple((f"{late} microseconds", copied(skew=late)) for late in (1.5, 4, -8)),
        cross_pulse,
    ),
    Row(
        "roll and tear: not locked yet",
        "keeper",
        22,
        tuple((f"{part:.0%} of the way", copied(settling=part)) for part in (0.15, 0.5, 0.7)),
    ),
    Row(
        "flat picture: white too low",
        "turning",
        200,
        tuple((f"{gain} dB", copied(gain=gain)) for gain in (-2.5, -4.5, -8)),
    ),
    Row(
        "clipped picture: white too high",
        "turning",
        200,
        tuple((f"+{gain} dB", copied(gain=gain)) for gain in (1.5, 3, 5)),
    ),
    Row(
        "the same on the waveform display",
        "turning",
        200,
        tuple((f"{gain:+} dB", copied(gain=gain)) for gain in (-4.5, 1.5, 5)),
        waveform,
    ),
    Row(
        "pedestal off",
        "winch",
        30,
        tuple((f"{off:+} IRE", copied(pedestal=off)) for off in (6, 14, -7)),
    ),
    Row(
        "generations, close",
        "keeper",
        50,
        tuple((f"generation {n}", generation(n)) for n in (2, 4, 8)),
        close,
    ),
    Row(
        "generations, close, bars",
        "bars",
        0,
        tuple((f"generation {n}", generation(n)) for n in (2, 4, 8)),
        close,
    ),
    Row(
        "dropouts",
        "tools",
        190,
        tuple((f"{many} a frame", copied(dropouts=many)) for many in (2, 8, 30)),
    ),
    Row(
        "weak from all causes: tracking, copies, dropouts",
        "clerk",
        30,
        tuple(
            (f"{off} %, generation {n}", replace(generation(n), tracking=-off, dropouts=n))
            for off, n in ((45, 2), (60, 4), (75, 6))
        ),
    ),
    Row(
        "recorded without pulses: nothing locks",
        "harbour",
        20,
        tuple((f"{at:.0%} of a round", copied(adrift=at)) for at in (0.1, 0.4, 0.8)),
    ),
    Row(
        "snow: nothing recorded",
        "harbour",
        20,
        tuple((f"frame {n}", Look(blank=True)) for n in (1, 2, 3)),
    ),
)


def faults(lines: Lines) -> Picture:
    """A row a fault: as it should be, then at three strengths."""
    return np.concatenate([_flashes(lines), *(_row(row, lines) for row in ROWS)])


def _flashes(lines: Lines) -> Picture:
    """Six frames about a cut, in order, with frames of a third shot left between the two."""
    shown = [
        (("as it should be", "1 frame", "2 frames", "3 frames")[many], _cut(many, lines))
        for many in range(4)
    ]
    return np.concatenate((_heading("flash frames at a cut", lines), _tiles(shown)))


def _cut(many: int, lines: Lines) -> Picture:
    names = [*["winch"] * 2, *["passing"] * many, *["keeper"] * (4 - many)]
    small = lines.size[0] // 3 // 8 * 8, lines.size[1] // 2
    shots = [frame(name, 160 + n, small) for n, name in enumerate(names)]
    return np.concatenate([np.concatenate(shots[first : first + 3], axis=1) for first in (0, 3)])


def _row(row: Row, lines: Lines) -> Picture:
    clean = frame(row.footage, row.n, lines.size)
    well = Look(lines=lines, snr=46, copies=1)
    shown = [("as it should be", row.display(clean, well, 1))]
    for number, (label, look) in enumerate(row.looks):
        shown.append((label, row.display(clean, replace(look, lines=lines), number)))
    return np.concatenate((_heading(row.name, lines), _tiles(shown)))


def _heading(name: str, lines: Lines) -> Picture:
    return _words(f"{name} ({lines.total} lines)", 4 * (TILE[0] + GAP) + GAP, INK)


def footage() -> Picture:
    """All there is to see, four in a row."""
    shown = [(name, frame(name, 90)) for name in FOOTAGE]
    shown += [("", np.full((480, 640, 3), PAPER, np.uint8))] * (-len(shown) % 4)
    return np.concatenate([_tiles(shown[first : first + 4]) for first in range(0, len(shown), 4)])


def _tiles(shown: list[tuple[str, Picture]]) -> Picture:
    """Pictures side by side, their labels beneath."""
    gap = np.full((TILE[1] + HEAD, GAP, 3), PAPER, np.uint8)
    columns = [gap]
    for label, picture in shown:
        small = Image.fromarray(picture).resize(TILE, Image.Resampling.LANCZOS)
        columns += [np.concatenate((np.asarray(small), _words(label, TILE[0], 90))), gap]
    return np.concatenate(columns, axis=1)


def _words(text: str, wide: int, ink: int) -> Picture:
    size = wide, HEAD
    cover = lettered(
        size, text, (3 * 640 / wide, HEAD / 2 * 640 / wide), 13 * 640 / wide, anchor="lm"
    )
    shade = (PAPER + (ink - PAPER) * cover).astype(np.uint8)
    return np.repeat(shade[..., None], 3, axis=2)


def main() -> None:
    FOLDER.mkdir(exist_ok=True)
    sheets = {
        "footage": footage(),
        "faults-525": faults(Lines.L525),
        "faults-625": faults(Lines.L625),
    }
    for name, sheet in sheets.items():
        file = FOLDER / f"{name}.jpg"
        file.write_bytes(jpeg(sheet, QUALITY))
        print(f"{file.name}: {file.stat().st_size / 1000:.0f} kB")


if __name__ == "__main__":
    main()
