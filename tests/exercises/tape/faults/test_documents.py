"""A document with exactly one fault for each kind, and its twin without.

Both can be read by hand: ``python manage.py simulate < data/faults/NAME.json``.
"""

import json
from pathlib import Path
from typing import Any

import pytest

from exercises.tape import FaultKind, simulate

DATA = Path(__file__).parents[1] / "data" / "faults"

# Track, range, edit, severity, measured value, unit, limit.
FAULTS = {
    "flash-frames": ("picture", 900, 902, 1, "annoying", 2, "frames", 3),
    "clipped-word": ("sound", 740, 750, 0, "very annoying", 12, "frames", 0),
    "stray-breath": ("sound", 600, 605, 0, "slightly annoying", 5, "frames", 0),
    "picture-level-jump": (
        *("picture", 900, 901, 1, "perceptible, but not annoying"),
        *(16, "IRE", 10),
    ),
    "sound-level-jump": (
        *("sound", 900, 901, 1, "perceptible, but not annoying"),
        *(50, "0.1 dB", 30),
    ),
    "flat-picture": ("picture", 600, 900, 0, "slightly annoying", 60, "IRE", 80),
    "clipped-picture": (
        *("picture", 600, 900, 0, "perceptible, but not annoying"),
        *(113, "IRE", 110),
    ),
    "weak-sound": ("sound", 600, 900, 0, "perceptible, but not annoying", -140, "0.1 dB", -100),
    "distorted-sound": ("sound", 600, 900, 0, "perceptible, but not annoying", 60, "0.1 dB", 30),
    "pressed-sound": ("sound", 600, 900, 0, "slightly annoying", 86, "0.1 dB", 40),
    "noisy-pauses": ("sound", 620, 638, 0, "perceptible, but not annoying", -260, "0.1 dB", -300),
    "noise-band": ("picture", 600, 900, 0, "perceptible, but not annoying", 80, "0.1 dB", 60),
    "bent-verticals": ("picture", 600, 900, 0, "slightly annoying", 25, "0.1 µs", 10),
    "mixed-recorders": ("picture", 900, 901, 1, "annoying", 2, "recorders", 1),
    "recorder-off-position": (
        *("picture", 600, 900, 0, "perceptible, but not annoying"),
        *(8, "% of a track", 0),
    ),
    "too-many-generations": ("picture", 600, 900, 0, "slightly annoying", 352, "0.1 dB", 366),
    "sound-out-of-step": ("sound", 600, 900, 1, "annoying", 133, "ms", 45),
}


def read(name: str) -> Any:
    return simulate(json.loads((DATA / f"{name}.json").read_text(encoding="utf-8")))


def test_every_kind_has_its_document_and_twin() -> None:
    names = sorted(path.stem for path in DATA.iterdir())

    assert list(FAULTS) == [kind.value for kind in FaultKind]
    assert names == sorted([*FAULTS, *(f"{kind}.twin" for kind in FAULTS)])


@pytest.mark.parametrize("kind", FAULTS)
def test_document_has_exactly_its_fault(kind: str) -> None:
    track, start, end, edit, severity, value, unit, limit = FAULTS[kind]

    assert read(kind)["faults"] == [
        {
            "kind": kind,
            "track": track,
            "start": start,
            "end": end,
            "severity": severity,
            "edit": edit,
            "measured": {"value": value, "unit": unit, "limit": limit},
        }
    ]


@pytest.mark.parametrize("kind", FAULTS)
def test_twin_has_no_fault(kind: str) -> None:
    assert read(f"{kind}.twin")["faults"] == []


@pytest.mark.parametrize("name", [*FAULTS, *(f"{kind}.twin" for kind in FAULTS)])
def test_all_of_the_tape_plays_once_the_machine_is_locked(name: str) -> None:
    assert [state["state"] for state in read(name)["states"]] == ["relock", "clean"]
