"""Every sort of motion that a drill serves, as the browser gets it: flashes by WCAG 2.2, 2.3.1."""

import io
from collections.abc import Iterator

import numpy as np
import pytest
from PIL import Image

from exercises.drills.asks import Json
from exercises.drills.media.rendering import render
from exercises.drills.register import KINDS
from exercises.signal.arrays import Picture
from tests.outside.flashes import flashes


def motions() -> dict[str, Json]:
    """One for each situation of each kind that shows any; its seed in the name."""
    found: dict[str, Json] = {}
    for slug, kind in KINDS.items():
        for seed in range(400):
            question = kind.make(seed)
            moving = [medium for medium in question.media if medium["form"] == "motion"]
            if not moving and seed > 20 and not any(name.startswith(slug) for name in found):
                break
            for medium in moving:
                found.setdefault(f"{slug}, {question.situation}", medium)
    return found


MOTIONS = motions()


def pictures(medium: Json) -> Iterator[Picture]:
    width, _ = medium["size"]
    row = np.asarray(Image.open(io.BytesIO(render(medium).content)))
    return (row[:, at : at + width] for at in range(0, row.shape[1], width))


def test_motions_are_found() -> None:
    """For WCAG 2.2, 2.3.1: enough kinds of motion are looked at."""
    assert len(MOTIONS) >= 15


@pytest.mark.parametrize("name", MOTIONS)
def test_motion_does_not_flash(name: str) -> None:
    """WCAG 2.2, 2.3.1: as the browser gets it."""
    medium = MOTIONS[name]

    assert max(flashes(pictures(medium), round(medium["rate"]))) < 3
