import pytest

from exercises.tape import FaultKind, Insert, Severity, Span, Tape
from tests.exercises.tape.faults.benchwork import (
    BLACK,
    found,
    insert,
    limited,
    recorded,
    spoken,
    told,
)

SPEECH = spoken(
    words=(Span(100, 120), Span(130, 150)),
    breaths=(Span(122, 128), Span(152, 160)),
)


@pytest.mark.parametrize(
    ("first", "out", "faults"),
    [
        (100, 150, []),
        (99, 151, []),
        (101, 150, [(500, 519, 0, 1)]),
        (119, 150, [(500, 501, 0, 19)]),
        (120, 150, []),
        (100, 149, [(530, 549, 0, 1)]),
        (100, 131, [(530, 531, 0, 19)]),
        (100, 130, []),
        (110, 140, [(500, 510, 0, 10), (520, 530, 0, 10)]),
        (105, 108, [(500, 503, 0, 5), (500, 503, 0, 12)]),
    ],
)
def test_word_is_clipped_by_a_point_inside_it(
    first: int, out: int, faults: list[tuple[int, ...]]
) -> None:
    assert told(FaultKind.CLIPPED_WORD, insert(SPEECH, first, out, 500)) == faults


@pytest.mark.parametrize(
    ("first", "out", "faults"),
    [
        (129, 150, []),
        (128, 150, []),
        (127, 150, [(500, 501, 0, 1)]),
        (122, 150, [(500, 506, 0, 6)]),
        (121, 150, []),
        (100, 152, []),
        (100, 153, [(552, 553, 0, 1)]),
        (100, 160, [(552, 560, 0, 8)]),
        (100, 161, []),
    ],
)
def test_breath_is_extra_where_it_is_heard_at_a_point(
    first: int, out: int, faults: list[tuple[int, ...]]
) -> None:
    assert told(FaultKind.STRAY_BREATH, insert(SPEECH, first, out, 500)) == faults


def test_sound_that_goes_on_is_not_cut() -> None:
    halves = insert(SPEECH, 100, 110, 500), insert(SPEECH, 110, 150, 510)

    assert told(FaultKind.CLIPPED_WORD, *halves) == []


def test_sound_that_goes_on_after_a_hole_is_cut() -> None:
    halves = insert(SPEECH, 100, 110, 500), insert(SPEECH, 110, 150, 515)

    assert told(FaultKind.CLIPPED_WORD, *halves, on=Tape.blank(1000)) == [
        (500, 510, 0, 10),
        (515, 525, 1, 10),
    ]


def test_later_edit_that_cuts_into_a_word_is_why() -> None:
    shots = insert(SPEECH, 100, 150, 500), insert(SPEECH, 300, 400, 540)

    assert told(FaultKind.CLIPPED_WORD, *shots) == [(530, 540, 1, 10)]


def test_new_picture_cuts_no_sound() -> None:
    tape = recorded(insert(SPEECH, 100, 150, 500))
    picture: Insert = insert(SPEECH, 300, 330, 510, tracks="picture")

    assert told(FaultKind.CLIPPED_WORD, picture, on=tape) == []
    assert told(FaultKind.CLIPPED_WORD, insert(SPEECH, 300, 330, 510), on=tape) == [
        (500, 510, 0, 10),
        (540, 550, 0, 10),
    ]


def test_bench_may_let_a_frame_pass() -> None:
    shot = insert(SPEECH, 101, 153, 500)
    bench = limited(clipped_word=1, stray_breath=1)

    assert told(FaultKind.CLIPPED_WORD, shot, bench=bench) == []
    assert told(FaultKind.STRAY_BREATH, shot, bench=bench) == []


@pytest.mark.parametrize(
    ("lost", "severity"),
    [
        (1, Severity.PERCEPTIBLE),
        (2, Severity.PERCEPTIBLE),
        (3, Severity.SLIGHTLY_ANNOYING),
        (5, Severity.ANNOYING),
        (7, Severity.VERY_ANNOYING),
        (19, Severity.VERY_ANNOYING),
    ],
)
def test_more_of_a_word_lost_annoys_more(lost: int, severity: Severity) -> None:
    faults = found(FaultKind.CLIPPED_WORD, insert(SPEECH, 100 + lost, 150, 500))

    assert [fault.severity for fault in faults] == [severity]


def test_black_without_marks_has_no_words() -> None:
    assert told(FaultKind.CLIPPED_WORD, on=BLACK) == []
