"""Outside values: set-up, white and sync of 525 and 625 lines (SMPTE 170M, ITU-R BT.1700), and
the scale of a VU meter (IEC 60268-17)."""

from itertools import pairwise

import pytest

from course.lessons.blocks.levels import LevelsFigure
from tests.course.lessons.blocks.reading import figure, refusal

IRE = 'scale = "IRE"\n'
VU = 'scale = "VU"\n'


def levels(toml: str) -> LevelsFigure:
    read = figure("levels", toml)
    assert isinstance(read, LevelsFigure)
    return read


@pytest.mark.parametrize(
    ("rate", "place", "level"),
    [
        ("25", "black", 0),
        ("29.97", "black", 7.5),
        ("25", "white", 100),
        ("29.97", "white", 100),
        ("25", "sync tip", -43),
        ("29.97", "sync tip", -40),
        ("29.97", "blanking", 0),
    ],
)
def test_named_place_stands_at_its_level(rate: str, place: str, level: float) -> None:
    read = levels(f'{IRE}rate = "{rate}"\nmarks = [{{ at = "{place}", name = "it" }}]')

    assert read.named("it").at == level


def test_vu_scale_is_even_in_voltage() -> None:
    # 0 VU is 71 % of the way to +3; 20 dB lower is a tenth of that.
    scale = levels(VU + 'marks = [{ at = 0, name = "it" }]').reading

    assert [round(scale.height(level), 2) for level in (-20, -6, 0, 3)] == [0.07, 0.35, 0.71, 1]


def test_levels_are_told_from_the_top() -> None:
    read = levels(
        VU
        + 'marks = [{ at = 0, name = "tone" }]\n'
        + 'ranges = [{ from = -20, to = -10, name = "weak" },'
        + '{ from = 0, to = 2.5, name = "loud" }]'
    )

    assert read.sentences() == [
        "A scale from −20 VU to +3 VU.",
        "From 0 to +2.5 VU: loud.",
        "At 0 VU: tone.",
        "From −20 to −10 VU: weak.",
    ]
    assert read.texts() == ["What it shows", "Look.", "tone", "weak", "loud"]


def test_names_stand_apart_and_on_the_drawing() -> None:
    marks = ", ".join(f'{{ at = {99 + n}, name = "n{n}" }}' for n in range(10))
    ys = [item["y"] for item in levels(f"{IRE}marks = [{marks}]").drawing["items"]]

    assert all(late - early >= 32 for early, late in pairwise(ys))
    assert min(ys) >= 14
    assert max(ys) <= 314


def test_stretches_that_touch_have_lanes_of_their_own() -> None:
    toml = "".join(
        f'[[ranges]]\nfrom = {first}\nto = {last}\nname = "{first}"\n'
        for first, last in ((0, 50), (50, 100), (40, 60), (70, 80))
    )
    items = {item["name"]: item for item in levels(IRE + toml).drawing["items"]}

    assert items["0"]["x"] < items["40"]["x"] < items["50"]["x"]
    assert items["70"]["x"] == items["0"]["x"]
    assert items["0"]["top"] == items["50"]["top"] + items["50"]["height"]


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ('scale = "mV"', 1, "scale is one of IRE, VU."),
        (IRE, 0, "There are neither marks nor ranges on the scale."),
        (IRE + "marks = 3", 2, "marks is not a list of tables."),
        (
            IRE + '[[marks]]\nat = 121\nname = "it"',
            3,
            "at in marks[0] is not on the scale, −43 IRE to 120 IRE.",
        ),
        (
            VU + 'marks = [{ at = 4, name = "it" }]',
            2,
            "at in marks[0] is not on the scale, −20 VU to +3 VU.",
        ),
        (VU + '[[marks]]\nat = "black"\nname = "it"', 3, "at in marks[0] is a number."),
        (
            IRE + '[[marks]]\nat = "grey"\nname = "it"',
            3,
            "at in marks[0] is a number, “sync tip”, “blanking”, “black”, “white”.",
        ),
        (VU + "[[marks]]\nat = true", 3, "at in marks[0] is a number."),
        (VU + "[[marks]]\nat = 1", 2, "name in marks[0] is missing or is not a text."),
        (
            VU + f'[[marks]]\nat = 1\nname = "{"n" * 33}"',
            4,
            f"“{'n' * 33}” has more than 32 letters.",
        ),
        (
            VU + '[[ranges]]\nfrom = 0\nto = 0\nname = "it"',
            4,
            "to in ranges[0] is not above from.",
        ),
        (VU + 'rate = "25"', 2, "A VU scale is the same at every rate; leave rate out."),
        (
            VU + 'marks = [{ at = 0, name = "it" }, { at = 1, name = "it" }]',
            2,
            "Two marks or ranges have the same name.",
        ),
        (
            VU + "marks = [" + ", ".join(f'{{ at = 0, name = "{n}" }}' for n in range(11)) + "]",
            2,
            "There is room for 10 marks and ranges.",
        ),
        (
            VU + 'marks = [{ at = 0, name = "it", colour = "red" }]',
            2,
            "colour is not known here; known are at, name.",
        ),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    assert refusal("levels", toml) == (line, sentence)
