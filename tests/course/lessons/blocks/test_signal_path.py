from itertools import combinations, pairwise, product

import pytest

from course.lessons.blocks.routes import HIGH, STEP_X, STEP_Y, WIDE, Cell, meet, way
from course.lessons.blocks.signal_path import SignalPath
from tests.course.lessons.blocks.reading import figure, refusal

BOXES = 'boxes = { player = [1, 1], mixer = [2, 2], recorder = [3, 1], "a desk" = [2, 1] }\n'
CELLS = [*product(range(4), range(4))]


def path(*links: str) -> SignalPath:
    read = figure("signal-path", BOXES + f"links = [{', '.join(links)}]")
    assert isinstance(read, SignalPath)
    return read


def link(source: str, target: str, carries: str, label: str = "") -> str:
    told = f', label = "{label}"' if label else ""
    return f'{{ from = "{source}", to = "{target}", carries = "{carries}"{told} }}'


def test_links_are_told_in_sentences() -> None:
    read = path(link("player", "a desk", "picture"), link("player", "mixer", "sound", "sound out"))

    assert read.sentences() == [
        "There are 4 boxes: player, mixer, recorder and a desk.",
        "Picture goes from “player” to “a desk”.",
        "Sound, marked “sound out”, goes from “player” to “mixer”.",
    ]
    assert "sound out" in read.texts()


def crossed(start: tuple[int, int], end: tuple[int, int], cell: Cell) -> bool:
    """Whether a stretch of a line runs through the inside of a box."""
    left, top = cell[0] * STEP_X, cell[1] * STEP_Y
    (x1, x2), (y1, y2) = (sorted(pair) for pair in zip(start, end, strict=True))
    return x1 < left + WIDE and x2 > left and y1 < top + HIGH and y2 > top


@pytest.mark.parametrize("lane", range(4))
def test_line_runs_through_no_box_wherever_boxes_stand(lane: int) -> None:
    full = set(CELLS)
    for start, end in combinations(CELLS, 2):
        corners = way(start, end, lane, full)
        through = [cell for cell in CELLS for a, b in pairwise(corners) if crossed(a, b, cell)]

        assert through == []
        assert all(a.x == b.x or a.y == b.y for a, b in pairwise(corners))


def test_lines_of_two_kinds_never_lie_on_one_another() -> None:
    full = set(CELLS)
    pairs = [(start, end) for start, end in combinations(CELLS, 2) if start[0] < 2 and end[0] < 3]
    for one, other in combinations(pairs[:40], 2):
        assert not meet(way(*one, 0, full), way(*other, 1, full))


def test_drawing_holds_every_box_and_line() -> None:
    read = path(link("player", "recorder", "picture"), link("mixer", "recorder", "sound"))
    left, top, width, height = map(int, read.drawing["view"].split())
    points = [point for each in read.links for point in read.way(each)]

    assert (width, height) == (read.drawing["width"], read.drawing["height"])
    assert all(left < x < left + width and top < y < top + height for x, y in points)
    # “a desk” stands between: the picture goes round it.
    assert len(read.way(read.links[0])) == 4


def test_two_columns_fit_a_phone() -> None:
    read = path(link("player", "mixer", "sound"))
    two = figure(
        "signal-path",
        f"boxes = {{ a = [1, 1], b = [2, 1] }}\nlinks = [{link('a', 'b', 'sync')}]",
    )
    assert isinstance(two, SignalPath)

    assert two.drawing["width"] <= 350 < read.drawing["width"]


LINK = '[[links]]\nfrom = "player"\nto = "recorder"\ncarries = "picture"\n'


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ("boxes = 3", 1, "boxes is not a table."),
        ("boxes = { a = [1, 1] }", 1, "A signal path has two boxes or more."),
        ("[boxes]\na = [1, 1]\nb = [1, 1]", 1, "Two boxes stand in the same place."),
        ("[boxes]\na = [1, 1]\nb = [5, 1]", 3, "“b” is at [column, row], up to [4, 6]."),
        (
            f"[boxes]\na = [1, 1]\n{'b' * 15} = [2, 1]",
            3,
            f"There is no room for “{'b' * 15}” in a box.",
        ),
        (BOXES, 0, "There are no links between the boxes."),
        (BOXES + LINK.replace("recorder", "dubber"), 4, "There is no box “dubber”."),
        (
            BOXES + LINK.replace('"recorder"', '"player"'),
            4,
            "A link from “player” leads to another box.",
        ),
        (
            BOXES + LINK.replace("picture", "smell"),
            5,
            "carries in links[0] is one of picture, sound, control, sync.",
        ),
        (
            BOXES + LINK + 'label = "more than there is"',
            6,
            "“more than there is” has more than 14 letters.",
        ),
        (
            BOXES
            + f"links = [{link('player', 'a desk', 'sync')}, {link('a desk', 'player', 'sync')}]",
            2,
            "Sync from “player” and from “a desk” would be one line; move a box.",
        ),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    assert refusal("signal-path", toml) == (line, sentence)
