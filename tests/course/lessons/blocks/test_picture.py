"""Outside values: levels of white and black (SMPTE 170M, ITU-R BT.1700), 75 % bars (SMPTE EG 1)."""

from typing import Any

import pytest

from course.lessons.blocks.picture import PictureFigure
from course.lessons.diagrams import read_diagram
from course.lessons.lesson import Diagram
from tests.course.lessons.blocks.reading import figure, refusal

TURNING = 'scene = "turning"\nframe = 70\n'
MAP = read_diagram(
    """
name = "map"
title = "A shot behind black"
caption = "Look."
rate = "25"
master = { length = 1000, recorded = [{ start = 0, end = 250, what = "black" }] }
sources.A.takes = [{ start = 0, end = 900 }]
edits = [
  { mode = "assemble", source = "A", in = 300, out = 400, at = 250 },
  { mode = "assemble", source = "A", in = 50, out = 150, at = 350 },
]
""",
    1,
)
MAPS = {"map": MAP}
OF_MAP = 'map = "map"\nshows = { A = "keeper" }\n'


def pictured(toml: str, maps: dict[str, Diagram] | None = None) -> PictureFigure:
    read = figure("picture", toml, maps or {})
    assert isinstance(read, PictureFigure)
    return read


def facts(toml: str, maps: dict[str, Diagram] | None = None) -> dict[str, Any]:
    (panel,) = pictured(toml, maps).panels
    held: dict[str, Any] = panel.spec["picture"]
    return held


def words(toml: str) -> str:
    return pictured(toml).panels[0].alternative


def test_picture_is_a_well_made_copy_unless_told() -> None:
    assert facts(TURNING) == {
        "scene": "turning",
        "frame": 70,
        "look": {"snr": 43.0, "copies": 2, "lines": 625},
        "display": "monitor",
        "mouth": None,
    }


def test_look_says_what_differs() -> None:
    look = facts(TURNING + 'rate = "29.97"\nlook = { tracking = 55, snr = 40 }')["look"]

    assert look == {"snr": 40, "copies": 2, "tracking": 55, "lines": 525}


def test_picture_is_told_in_words() -> None:
    assert pictured(TURNING + "look = { tracking = 55 }").panels[0].words == (
        "On a monitor: the bridge turning.",
        "The brightest parts stand at about 100 IRE, with detail.",
        "The grain lies 43 dB under the picture; fine detail is sharp.",
        "White streaks lie across it from 55 % to 85 % of the way down.",
        "Upright lines are straight.",
        "The picture stands at its right height.",
    )


def test_bars_stand_at_their_level() -> None:
    # The white of 75 % bars is 76.9 IRE at 525 lines, and 75 at 625.
    bars = 'scene = "bars"\ndisplay = "waveform"\n'

    assert "at about 77 IRE, with detail. Black stands at 7.5 IRE." in words(
        bars + 'rate = "29.97"'
    )
    assert "at about 75 IRE, that is 525 mV, with detail. Black stands at 0 IRE." in words(bars)


@pytest.mark.parametrize(
    ("look", "sentence"),
    [
        ("gain = 3", "The brightest parts stand at 110 IRE and are all alike, without detail."),
        ("gain = -6.02", "The brightest parts stand at about 50 IRE, with detail."),
        ("source = 130", "The brightest parts stand at 110 IRE and are all alike, without detail."),
        ("blank = true", "On a monitor: no picture, only moving grey grain from edge to edge."),
    ],
)
def test_level_is_told_as_it_is_seen(look: str, sentence: str) -> None:
    assert sentence in words(f"{TURNING}look = {{ {look} }}")


def test_black_is_told_as_black() -> None:
    assert "All of it is black." in words('scene = "black"')


def test_panels_say_what_differs() -> None:
    read = pictured(
        TURNING
        + 'panels = [{ line = "Set." }, { line = "Off.", display = "underscan", '
        + "look = { skew = 4 } }]"
    )

    assert [panel.line for panel in read.panels] == ["Set.", "Off."]
    assert [panel.spec["picture"]["display"] for panel in read.panels] == ["monitor", "underscan"]
    assert len({panel.url for panel in read.panels}) == 2
    assert read.texts() == ["What it shows", "Look.", "Set.", "Off."]


def test_picture_of_a_map_is_what_plays_there() -> None:
    held = facts(OF_MAP + "at = 260", MAPS)

    assert (held["scene"], held["frame"]) == ("keeper", 310)
    assert held["look"]["copies"] == 2


def test_picture_of_a_map_after_fewer_edits_shows_the_tape_then() -> None:
    now, then = (facts(f"{OF_MAP}at = 360\nedits = {made}", MAPS) for made in (2, 1))

    assert (now["scene"], now["frame"]) == ("keeper", 60)
    assert then["look"]["blank"] is True


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ("", 0, "scene is one of "),
        ('scene = "moon"', 1, "scene is one of "),
        (TURNING + 'display = "radar"', 3, "display is one of monitor, underscan, "),
        (TURNING + 'rate = "24"', 3, "rate is one of 25, 29.97."),
        (TURNING + "look = { colour = 1 }", 3, "colour is not known here; known are source, "),
        (TURNING + "[look]\ntracking = 101", 4, "tracking in look is from −100 to 100."),
        (TURNING + "[look]\ncopies = 1.5", 4, "copies in look is from 0 to 12."),
        (TURNING + "[look]\nblank = 1", 4, "blank in look is true or false."),
        (TURNING + "at = 3", 3, "at is not known here; known are "),
        (TURNING + 'panels = [{ line = "One." }]', 3, "There are two panels, or none."),
        (
            TURNING + 'panels = [{ line = "One." }, { look = {} }]',
            3,
            "line in panels[1] is missing or is not a text.",
        ),
        ('map = "other"\nat = 3', 1, "There is no tape map “other” further up."),
        (OF_MAP, 0, "at is a whole number from 0 to 999."),
        (OF_MAP + "at = 1000", 3, "at is a whole number from 0 to 999."),
        (OF_MAP + "at = 3\nedits = 3", 4, "edits is a whole number from 0 to 2."),
        (
            'map = "map"\nat = 260\nshows = { B = "keeper" }',
            3,
            "shows has no scene for “A”, which is seen there.",
        ),
        ('map = "map"\nat = 260\n[shows]\nA = "moon"', 4, "A in shows is one of "),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    told_line, told = refusal("picture", toml, MAPS)

    assert (told_line, told[: len(sentence)]) == (line, sentence)
