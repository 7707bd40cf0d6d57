"""Outside values: a head as wide as its stripe loses 6.02 dB at half a stripe, 2.5 dB at a
quarter; a strain of 1 in 10,000 is 1.67 µs of a field of 16.68 ms and 2.0 µs of one of 20 ms."""

import re
from typing import Any

import pytest

from course.lessons.blocks.head_and_track import HeadAndTrack
from tests.course.lessons.blocks.reading import figure, refusal


def head(toml: str) -> HeadAndTrack:
    read = figure("head-and-track", toml)
    assert isinstance(read, HeadAndTrack)
    return read


@pytest.mark.parametrize(
    ("tracking", "sentence"),
    [
        (50, "It reads 50 % of its stripe: the signal is 6.0 dB down."),
        (-25, "It reads 75 % of its stripe: the signal is 2.5 dB down."),
        (0, "It reads all of its stripe."),
        (100, "It reads nothing of its stripe."),
    ],
)
def test_signal_falls_with_the_head_off_its_stripe(tracking: int, sentence: str) -> None:
    assert sentence in head(f"tracking = {tracking}").sentences()[-1]


@pytest.mark.parametrize(("rate", "step"), [("25", "2.0 µs"), ("29.97", "1.7 µs")])
def test_stretched_tape_makes_a_step(rate: str, step: str) -> None:
    told = head(f'stretch = 1\nrate = "{rate}"').sentences()[-1]

    assert told.endswith(
        "The tape is longer than it was by 1 part in 10,000. "
        f"Where the heads change over: a step of {step}."
    )


def test_pair_is_told_side_by_side() -> None:
    read = head('tracking = [0, 50]\nlines = ["Set.", "Off."]')

    assert read.texts() == ["What it shows", "Look.", "Set.", "Off."]
    assert [each.partition(" The head runs ")[2][:14] for each in read.sentences()[2:]] == [
        "along the midd",
        "50 % of a stri",
    ]


def test_one_value_holds_for_both_of_a_pair() -> None:
    runs = head('tracking = [0, 50]\nstretch = 2\nlines = ["Set.", "Off."]').runs

    assert [(run.tracking, run.stretch) for run in runs] == [(0, 2), (50, 2)]


def left_of(path: str) -> float:
    found = re.match(r"M([\d.-]+) ", path)
    assert found
    return float(found[1])


@pytest.mark.parametrize("tracking", [-100, -40, 0, 40, 100])
def test_what_is_read_is_where_path_and_stripe_overlap(tracking: int) -> None:
    (run,) = head(f"tracking = {tracking}").runs
    drawing: Any = run.drawing
    own, path = left_of(drawing["own"]), left_of(drawing["path"])

    assert path - own == pytest.approx(0.4 * tracking)
    if drawing["read"]:
        width = float(drawing["read"].split("h")[1].split("L")[0])
        assert left_of(drawing["read"]) == pytest.approx(max(own, path))
        assert width == pytest.approx(40 - abs(path - own))
    assert drawing["name_x"] + 75 < 340 or tracking > 90


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ("tracking = 101", 1, "tracking is a whole number from −100 to 100, or two of them."),
        ("tracking = 1.5", 1, "tracking is a whole number from −100 to 100, or two of them."),
        ("stretch = [1, 2, 3]", 1, "stretch is a whole number from −20 to 20, or two of them."),
        ("tracking = [0, 1]", 0, "A pair has lines, one over each drawing; one alone has none."),
        (
            'lines = ["One."]',
            1,
            "A pair has lines, one over each drawing; one alone has none.",
        ),
        (
            'tracking = [0, 1]\nlines = ["One.", ""]',
            2,
            "A pair has lines, one over each drawing; one alone has none.",
        ),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    assert refusal("head-and-track", toml) == (line, sentence)
