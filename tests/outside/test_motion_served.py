"""Every sort of motion that a drill serves, as the browser gets it: flashes by WCAG 2.2, 2.3.1."""

import io
from collections.abc import Iterator

import numpy as np
import pytest
from PIL import Image

from exercises.drills.asks import Json
from exercises.drills.kind import Kind
from exercises.drills.kinds.spot_by_eye import KIND as SPOT_BY_EYE
from exercises.drills.media.rendering import render
from exercises.drills.register import KINDS
from exercises.signal.arrays import Picture
from tests.exercises.drills.made import made
from tests.outside.flashes import flashes

FORMS = 300  # seeds: each situation of a kind that shows motion has come up by then


def motions(kind: Kind) -> dict[str, Json]:
    """One for each situation of a kind that shows any."""
    found: dict[str, Json] = {}
    for seed in range(FORMS):
        question = made(kind, seed)
        moving = [medium for medium in question.media if medium["form"] == "motion"]
        if not moving and seed > 8 and not found:
            break
        for medium in moving:
            found.setdefault(question.situation, medium)
    return found


def pictures(medium: Json) -> Iterator[Picture]:
    width, _ = medium["size"]
    row = np.asarray(Image.open(io.BytesIO(render(medium).content)))
    return (row[:, at : at + width] for at in range(0, row.shape[1], width))


PARTS = 4


def test_motions_are_found() -> None:
    """For WCAG 2.2, 2.3.1: enough kinds of motion are looked at, of one kind of drill."""
    found = {slug: motions(kind) for slug, kind in KINDS.items()}

    assert [slug for slug, moving in found.items() if moving] == [SPOT_BY_EYE.slug]
    assert len(motions(SPOT_BY_EYE)) >= 15


@pytest.mark.parametrize("part", range(PARTS))
def test_motion_does_not_flash(part: int) -> None:
    """WCAG 2.2, 2.3.1: as the browser gets it."""
    for situation, medium in list(motions(SPOT_BY_EYE).items())[part::PARTS]:
        assert max(flashes(pictures(medium), round(medium["rate"]))) < 3, situation
