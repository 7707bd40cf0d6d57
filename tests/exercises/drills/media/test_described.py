"""Pictures in words, held against the pictures themselves."""

import numpy as np
import pytest

from exercises.drills.media.described import motion, picture_in_words
from exercises.drills.media.medium import Picture
from exercises.signal.footage import frame
from exercises.signal.picture import Look, rendered


def picture(**look: object) -> Picture:
    return Picture(scene="grid", frame=3, look=look, display="underscan")


def test_plain_picture_has_nothing_of_note() -> None:
    assert picture_in_words(Picture(scene="harbour", frame=3, look={"snr": 43.0, "copies": 2})) == (
        "The harbour at dawn. The brightest parts stand at 100 IRE, with detail in them. "
        "The grain lies 43 dB under the picture; fine detail is sharp. "
        "There are no white streaks. Upright lines are straight. "
        "The picture stands at its right height."
    )


def test_streaks_are_told_where_they_lie() -> None:
    """Where the rows of the picture itself change most."""
    clean = frame("black", 0).astype(int)
    seen = rendered(frame("black", 0), Look(tracking=60), 3).astype(int)
    rows = np.flatnonzero(np.abs(seen - clean).max(axis=(1, 2)) > 120) * 100 / 480
    words = picture_in_words(picture(tracking=60.0, snr=46.0))

    first, last = (int(words.split(each)[1].split()[0]) for each in ("from ", " to "))
    assert rows.min() == pytest.approx(first, abs=3)
    assert rows.max() == pytest.approx(last, abs=3)


def test_picture_adrift_is_told_as_sliding_and_torn_and_blank_as_neither() -> None:
    words, blank = (
        picture_in_words(picture(adrift=0.4, snr=43.0, copies=2)),
        picture_in_words(picture(blank=True)),
    )
    seen = rendered(frame("black", 0), Look(adrift=0.4), 3).astype(int)
    rows = np.flatnonzero(seen.max(axis=(1, 2)) > 120) * 100 / 480

    first, last = (int(words.split(each)[1].split()[0]) for each in ("from ", " to "))
    assert (rows.min(), rows.max()) == pytest.approx((first, last), abs=4)
    assert "Upright lines lean, and tear where streaks lie." in words
    assert "stands 40 % of its height too low" in words
    assert blank == "No picture: moving grey grain from edge to edge."


def test_dirt_on_the_heads_is_told_from_edge_to_edge() -> None:
    """At 10 dB the limiter holds the signal no more; a track strays by 2 dB (see the envelope)."""
    assert "from 0 % to 100 % of the way down" in picture_in_words(picture(dirt=11.0, snr=46.0))
    assert "There are no white streaks." in picture_in_words(picture(dirt=7.0, snr=46.0))


def test_single_streaks_are_counted() -> None:
    assert "Single white streaks lie here and there, about 14 of" in picture_in_words(
        picture(dropouts=14.0, snr=46.0)
    )


@pytest.mark.parametrize("skew", [6.0, -6.0, 3.0])
def test_lean_is_told_in_pixels_and_to_its_side(skew: float) -> None:
    """An upright edge, in the picture itself: its top row against its middle."""
    upright = np.zeros((480, 640, 3), np.uint8)
    upright[:, 320:] = 255
    seen = rendered(upright, Look(skew=skew), 3)[..., 1]
    edges = [int(np.argmax(seen[row] > 127)) for row in (0, 240)]
    lean = edges[0] - edges[1]

    side = "right" if lean > 0 else "left"
    words = picture_in_words(picture(skew=skew, snr=46.0))
    told_lean = int(words.split(" pixels")[0].split()[-1])
    assert told_lean == pytest.approx(abs(lean), abs=1)
    assert f"of 640 to the {side}." in words


def test_white_that_is_lost_is_told_as_lost() -> None:
    assert "stand at 110 IRE and are all alike" in picture_in_words(picture(gain=3.0, snr=43.0))
    assert "stand at 109 IRE, with detail" in picture_in_words(picture(source=109.0, snr=43.0))


def test_pictures_alike_are_told_once() -> None:
    plain, leaning = picture(snr=43.0), picture(snr=43.0, skew=5.0)

    words = motion([plain, plain, leaning, plain])

    assert [each.split(":")[0] for each in words] == ["Pictures 1 to 2", "Picture 3", "Picture 4"]
