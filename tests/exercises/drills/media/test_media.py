"""What questions show: kept as JSON, made into files of pictures and sounds."""

import io
import json
import wave
from typing import Any

import pytest
from PIL import Image

from exercises.drills.media.medium import (
    Motion,
    Picture,
    PictureStrip,
    SoundClip,
    SourceSound,
    Still,
    facts,
    media,
    shape,
)
from exercises.drills.media.rendering import render

BLACK = Picture(scene="black", frame=0)
LEANING = Picture(scene="grid", frame=3, look={"lines": 625, "skew": 4.0}, display="underscan")
SESSION = {
    "rate": "25",
    "master": {"length": 500, "recorded": [{"start": 0, "end": 500, "what": "black"}]},
    "sources": {"Tape 1": {"takes": [{"start": 0, "end": 600}]}},
    "edits": [
        {"mode": "insert", "picture": True, "sound": True, "source": "Tape 1"}
        | {"in": 200, "out": 300, "at": 200}
    ],
}
SOUND = SourceSound(lines=("keeper-3",), begin=8200)
TOLD: dict[str, Any] = {"title": "The picture", "words": ("It is dark.",)}


def size_of(content: bytes) -> tuple[int, int]:
    return Image.open(io.BytesIO(content)).size


def test_media_come_back_as_they_are_stored() -> None:
    kept = media(
        Still(**TOLD, picture=LEANING), PictureStrip(**TOLD, pictures=(BLACK,) * 5, across=2)
    )

    assert json.loads(json.dumps(kept)) == kept


def test_still_is_one_picture_of_its_size() -> None:
    (still,) = media(Still(**TOLD, picture=LEANING, size=(320, 240)))

    made = render(still)

    assert (made.type, size_of(made.content)) == ("image/jpeg", (320, 240))


def test_same_facts_make_the_same_bytes() -> None:
    (still,) = media(Still(**TOLD, picture=LEANING))

    assert render(still) == render(still)


@pytest.mark.parametrize(("across", "size"), [(1, (64, 240)), (2, (128, 144)), (5, (320, 48))])
def test_strip_lies_in_rows(across: int, size: tuple[int, int]) -> None:
    (strip,) = media(PictureStrip(**TOLD, pictures=(BLACK,) * 5, across=across, size=(64, 48)))

    assert size_of(render(strip).content) == size
    assert (64 * shape(strip)[0], 48 * shape(strip)[1]) == size


def test_motion_lies_in_one_row() -> None:
    (motion,) = media(Motion(**TOLD, pictures=(BLACK,) * 3, rate=25, size=(64, 48)))

    assert size_of(render(motion).content) == (192, 48)


def test_clip_lasts_as_long_as_its_frames() -> None:
    (clip,) = media(
        SoundClip(**TOLD, session=SESSION, sounds={"Tape 1": SOUND}, start=190, end=290)
    )

    made = render(clip)

    with wave.open(io.BytesIO(made.content)) as file:
        seconds = file.getnframes() / file.getframerate()
    assert (made.type, seconds) == ("audio/wav", 4.0)


def test_words_are_no_facts() -> None:
    (still,) = media(Still(**TOLD, picture=BLACK))

    assert set(facts(still)) == {"form", "picture", "size"}
