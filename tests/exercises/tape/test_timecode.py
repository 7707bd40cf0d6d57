"""Which labels exist; tests/outside has the whole day against the standard."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import Rate, TimecodeError, frame_of, label


@given(st.sampled_from(((Rate.R29_97, True), (Rate.R29_97, False), (Rate.R25, False))), st.data())
def test_label_names_its_frame(code: tuple[Rate, bool], data: st.DataObject) -> None:
    rate, drop = code
    frame = data.draw(st.integers(0, rate.day(drop=drop) - 1))

    assert frame_of(label(frame, rate, drop), rate) == frame


@pytest.mark.parametrize(
    ("text", "rate"),
    [
        ("00:01:00;00", Rate.R29_97),
        ("00:01:00;01", Rate.R29_97),
        ("23:59:00;00", Rate.R29_97),
        ("00:00:60:00", Rate.R29_97),
        ("00:60:00:00", Rate.R29_97),
        ("24:00:00:00", Rate.R29_97),
        ("24:00:00;00", Rate.R29_97),
        ("00:00:00:30", Rate.R29_97),
        ("00:00:00;30", Rate.R29_97),
        ("00:00:00:25", Rate.R25),
        ("00:00:00;00", Rate.R25),
        ("", Rate.R25),
        ("0:00:00:00", Rate.R25),
        ("00:00:00:0", Rate.R25),
        ("00:00:00:000", Rate.R25),
        ("00:00:00", Rate.R25),
        ("00:00:00.00", Rate.R25),
        ("00;00;00;00", Rate.R29_97),
        ("-0:00:00:00", Rate.R25),
        (" 00:00:00:00", Rate.R25),
        ("00:00:00:00\n", Rate.R25),
        ("٠٠:٠٠:٠٠:٠٠", Rate.R25),
    ],
)
def test_label_that_does_not_exist_is_refused(text: str, rate: Rate) -> None:
    with pytest.raises(TimecodeError):
        frame_of(text, rate)


@pytest.mark.parametrize("text", ["00:10:00;00", "00:00:00;00", "00:01:00:00", "23:50:00;01"])
def test_label_that_looks_dropped_but_is_not_is_read(text: str) -> None:
    assert label(frame_of(text, Rate.R29_97), Rate.R29_97, ";" in text) == text


def test_refusal_says_what_is_wrong_on_one_line() -> None:
    with pytest.raises(TimecodeError) as refusal:
        frame_of("00:01:00;00", Rate.R29_97)
    assert str(refusal.value) == "00:01:00;00 does not exist: drop-frame code leaves it out."

    with pytest.raises(TimecodeError) as refusal:
        frame_of("00:00:60:00", Rate.R25)
    assert str(refusal.value) == "00:00:60:00 does not exist: the last label is 23:59:59:24."

    with pytest.raises(TimecodeError) as refusal:
        frame_of("ten\npast" * 20, Rate.R25)
    assert "\n" not in str(refusal.value)
    assert len(str(refusal.value)) < 120


@pytest.mark.parametrize(
    ("frame", "rate", "drop"),
    [
        (-1, Rate.R25, False),
        (2_160_000, Rate.R25, False),
        (2_592_000, Rate.R29_97, False),
        (2_589_408, Rate.R29_97, True),
        (0, Rate.R25, True),
    ],
)
def test_frame_without_a_label_is_refused(frame: int, rate: Rate, drop: bool) -> None:
    with pytest.raises(TimecodeError):
        label(frame, rate, drop)
